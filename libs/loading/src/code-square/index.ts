export { type DrawnSquare, drawSquare } from './draw-square.js';
