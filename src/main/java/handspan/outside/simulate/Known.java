package handspan.outside.simulate;

import java.util.function.Function;

/** An entry of the catalogue and how it is built. */
record Known(CatalogueEntry entry, Function<Workshop, SimulatedInstrument> build) {}
