package comparand.model.library;

/** An enum whose words in files are not its constants' names in kebab case. */
public interface Spelled {

    String spelling();
}
