/**
 * Measures the engine, by hand and not in the tests: {@code EngineReport} how right it is, {@code EngineBenchmark} how
 * fast.
 */
@NullMarked
package org.misecue.bench;

import org.jspecify.annotations.NullMarked;
