export { methodsInThreads } from './methods-in-threads.js';
export { searchOpenInThreads } from './search-open-in-threads.js';
