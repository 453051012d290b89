/**
 * Measures the engine, by hand and not in the tests: {@code EngineReport} how right it is, {@code EngineBenchmark} how
 * fast, and {@code ReadingBenchmark} and {@code ReadingReport} how fast recipes are read. {@code CardReport} measures the reading of text in films that
 * {@code CardMaker} invents. {@code ArchiveReport} measures the search over folders
 * of episodes that {@code SyntheticArchive} invents.
 */
@NullMarked
package org.misecue.bench;

import org.jspecify.annotations.NullMarked;
