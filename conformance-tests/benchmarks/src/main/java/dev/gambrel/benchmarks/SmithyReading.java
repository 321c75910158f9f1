package dev.gambrel.benchmarks;

import software.amazon.smithy.model.Model;
import software.amazon.smithy.model.loader.ModelAssembler;

/** Smithy's model assembler with its own validators: the second peer. What all models share is loaded beforehand. */
final class SmithyReading {
    private final ModelAssembler prepared = Model.assembler();

    /**
     * Reads and validates.
     *
     * @param text a model
     * @return the model
     * @throws software.amazon.smithy.model.validation.ValidatedResultException if it has an error
     */
    Model read(String text) {
        return prepared.copy().addUnparsedModel("sheet.smithy", text).assemble().unwrap();
    }
}
