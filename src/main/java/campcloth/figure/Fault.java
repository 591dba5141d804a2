package campcloth.figure;

/**
 * What is wrong with a reference table, and where.
 *
 * @param file name of the file
 * @param line line in the file, counted from 1
 * @param field column at fault
 * @param because what is wrong
 * @param remedy what would make it right
 */
public record Fault(String file, long line, String field, String because, String remedy) {

    public String sentence() {
        return file + " line " + line + ", " + field + ": " + because + "; " + remedy;
    }
}
