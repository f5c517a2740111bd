export * from './aircraft-type.js';
export { centreOfGravity, envelopeAt, type Mass } from './envelope.js';
export * from './route-load.js';
export { type StripWeights, stripWeights } from './strip-limit.js';
