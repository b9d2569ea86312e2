package comparand.app;

/** How findings are printed. Lower case, because people type it. */
enum FindingsFormat {
    text,
    json
}
