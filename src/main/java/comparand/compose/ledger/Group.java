package comparand.compose.ledger;

/** What kind of thing changed; in the order of the ledger. */
enum Group {
    TOOL,
    QUESTION,
    RULE,
    SOURCE,
    VALUE,
    ASIDE,
    LOCAL,
    PRICE
}
