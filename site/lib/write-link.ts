// Writing a link needs a compressor; figures fetch it when a case is changed or handed over.
export { scenarioToLink } from '#engine';
