export { keepTelling, type ToldProgress } from './keep-telling.js';
export { methodsInThreads } from './methods-in-threads.js';
export { searchOpenInThreads } from './search-open-in-threads.js';
