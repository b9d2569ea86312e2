package comparand.model.library;

/** Whether a dossier may leave the house. */
public enum DossierState {
    DRAFT,
    RELEASED
}
