package comparand.study;

import java.util.Comparator;

/** A unit, run or case of a study by its name, which is unique in its centre. */
record Member(String centre, String id) {

    static final Comparator<Member> ORDER = Comparator.comparing(Member::centre).thenComparing(Member::id);
}
