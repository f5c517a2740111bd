import { createContext, useContext } from 'react';

/** How many dialogs a component stands in: keys belong to the topmost. */
export const LayerContext = createContext(0);

export const useLayer = (): number => useContext(LayerContext);
