// Made-up loads for tests, of this lib and of others.
export { examplePlace, exampleRequest } from '../example-flight.js';
export { exampleSheetRequest } from '../load-sheet/example-sheet.js';
export { exampleLoad, standing } from '../named-load/example-load.js';
