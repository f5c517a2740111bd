export { searchInThreads } from './search-in-threads.js';
export { searchOpenInThreads } from './search-open-in-threads.js';
