/**
 * Measures the engine, by hand and not in the tests: {@code EngineReport} how right it is, {@code EngineBenchmark} how
 * fast, and {@code ReadingBenchmark} how fast recipes are read. {@code CardReport} measures the reading of text in films that
 * {@code CardMaker} invents. {@code SyntheticArchive} invents whole folders of episodes.
 */
@NullMarked
package org.misecue.bench;

import org.jspecify.annotations.NullMarked;
