package fascicle.notebook.text;

/** Says in a maker's words what a YAML library complains of. */
final class YamlTrouble {

    private YamlTrouble() {}

    /**
     * Words for a complaint.
     *
     * @param problem the library's complaint
     * @param context what it was doing
     * @return what is wrong and how to mend it
     */
    static String inWords(String problem, String context) {
        if (problem.contains("mapping values are not allowed")) {
            return "a colon stands here where none can be read: a text with a colon and a space in it needs quotes, "
                    + "as in title: \"Brick: the second try\"; or a line above lacks its own";
        }
        if (context.contains("quoted")) {
            return "the quotation mark that opens here is never closed; close it";
        }
        if (problem.contains("TAB")) {
            return "a tab character stands here; YAML is indented with spaces: put spaces in its place";
        }
        if (context.contains("flow sequence")) {
            return "a list that opens with “[” before this is not closed, or lacks a comma; close it with “]”";
        }
        if (context.contains("flow mapping")) {
            return "a map that opens with “{” before this is not closed, or lacks a comma; close it with “}”";
        }
        if (problem.contains("cannot start any token") || problem.contains("found character")) {
            return "a value cannot begin with this character; put the value in quotes";
        }
        if (problem.contains("expected <block end>") || context.contains("block mapping")
                || context.contains("block collection")) {
            return "this line does not stand under the keys above it; indent keys of one map by the same number of "
                    + "spaces, and list items by a “- ” each";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a key without its colon stands here; write it as “key: value”";
        }
        if (problem.contains("special characters are not allowed")) {
            return "a control character stands here; take it out";
        }
        if (problem.contains("nesting") || problem.contains("depth")) {
            return "lists and maps are nested too deeply here; no part of the notebook's form needs that";
        }
        if (problem.contains("<stream end>")) {
            return "the text ends here while a bracket or a brace above it is still open; close it with “]” or “}”";
        }
        return "this cannot be read as YAML (" + problem.replaceAll("\\s+", " ").strip()
                + "); look for a missing quotation mark, bracket or colon here or just above";
    }
}
