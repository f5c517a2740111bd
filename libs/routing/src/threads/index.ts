export { searchInThreads } from './search-in-threads.js';
