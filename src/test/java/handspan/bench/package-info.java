/**
 * How quick the program is, as tables: {@code mvn -Pbench verify}. One class ending in {@code Bench} for each table;
 * what it measures runs in a JVM of its own. Start reading at {@link handspan.bench.BenchTable}. Nothing here asserts
 * by wall time: only that something was measured.
 */
@NullMarked
package handspan.bench;

import org.jspecify.annotations.NullMarked;
