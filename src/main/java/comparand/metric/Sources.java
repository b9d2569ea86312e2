package comparand.metric;

/** Works that several metrics rest on. */
final class Sources {

    static final Citation ISO_7199 =
            Citation.fromMemory("ISO 7199", "definition of the heat exchanger performance factor");
    static final Citation ASTM_F1841 = Citation.fromMemory(
            "ASTM F1841, Assessment of hemolysis in continuous flow blood pumps", "definition of the index");
    static final Citation FICK = Citation.commonPractice("the principle of Fick, blood side");
    static final Citation SEVERINGHAUS = Citation.read(
            "Severinghaus, J Appl Physiol 1979;46:599-602", "equations 1 to 4 of the abstract; human blood");
    static final Citation ELLIS = Citation.read(
            "Ellis, J Appl Physiol 1989;67:902", "exact inverse of equation 1 of Severinghaus, as used in open code");
    static final Citation KELMAN_OXYGEN =
            Citation.read("Kelman, J Appl Physiol 1966;21:1375-1376", "constants a1 to a7, as used in open code");
    static final Citation KELMAN_CARBON_DIOXIDE = Citation.read(
            "Kelman, Respir Physiol 1967;3:111-115", "solubility and pK', as cited in the abstract of Douglas 1988");
    static final Citation DOUGLAS = Citation.read(
            "Douglas, Jones and Reed, J Appl Physiol 1988;65:473-477",
            "abstract, and Table 3 as transcribed in an open repository");
    static final Citation LOEPPKY = Citation.read(
            "Loeppky, Luft and Fletcher, Respir Physiol 1983;51:167-181",
            "12.8105 · PCO₂^0.3692, as transcribed in an open repository; the paper was not opened");
    static final Citation GAS_LAW = Citation.read(
            "MacIntyre et al., Eur Respir J 2005;26:720-735", "Table 5, to STPD (identified from memory)");
    static final Citation OXYGEN_CONTENT_EXAMPLE =
            Citation.read("anaesthesiauk.com 2005, oxygen content", "example: 20.1 + 0.3 = 20.4 mL/dL");
    static final Citation MOCKROS = Citation.fromMemory(
            "Mockros and Leonard, Trans Am Soc Artif Intern Organs 1985;31:628-633", "viscosity of blood");
    static final Citation RANUCCI =
            Citation.fromMemory("Ranucci et al., Ann Thorac Surg 2005;80:2213-2220", "oxygen delivery on bypass");
    static final Citation KARDIOTECHNIK =
            Citation.read("Hamilton et al., Kardiotechnik 2020;29:124-130", "appendices 2 and 4");
    static final Citation SHUNT_EQUATION =
            Citation.read("West, Respiratory Physiology: The Essentials", "shunt equation, as cited on open pages");
    static final Citation SHUNT_VARIANTS = Citation.read(
            "Toffaletti and Zavorsky, Physiol Rep 2026, DOI 10.14814/phy2.70763",
            "abstract: four formulas give 2.8 to 5.2 % on one subject");
    static final Citation REFERENCE_FLOW = Citation.read(
            "Myers, J Extra Corpor Technol 2014;46:192-196", "reference blood flow is not the maximum flow");

    private Sources() {}
}
