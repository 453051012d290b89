package org.misecue.recipe;

/** A setting with the place of its words in the step. */
record Stated(int start, int end, Setting setting) {}
