export { highsInThread } from './highs-in-thread.js';
export { methodsInThreads } from './methods-in-threads.js';
export { searchInThreads } from './search-in-threads.js';
export { searchOpenInThreads } from './search-open-in-threads.js';
