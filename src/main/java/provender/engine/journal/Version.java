package provender.engine.journal;

/**
 * One hand on an entry: who wrote it, changed it, took it back or brought it back. What they set stands in that entry.
 *
 * @param deed written, amended, withdrawn or restored
 * @param place where the server put it; 0 while it has not been sent
 */
public record Version(String entry, String deed, String by, String happenedAt, double place) {}
