// Fetched by itself: few loads do not hold.
export { waysToHold } from '@drumline/loading';
