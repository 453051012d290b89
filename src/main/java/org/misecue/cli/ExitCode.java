package org.misecue.cli;

/** What the process tells the program that started it. */
public final class ExitCode {

    public static final int OK = 0;
    /** {@code compare} only: something said differs from what is written. */
    public static final int DIFFERS = 1;
    /** Bad input or bad usage; a sentence says how to mend it. */
    public static final int BAD_INPUT = 2;
    /** A fault of misecue itself. */
    public static final int OUR_FAULT = 3;

    private ExitCode() {}
}
