/** The same function, computed once by key. An object is known by itself, so pass the scenario's own objects. */
export const memo = <K, V>(compute: (key: K) => V): ((key: K) => V) => {
  const known = new Map<K, V>();
  return (key) => {
    const value = known.has(key) ? (known.get(key) as V) : compute(key);
    known.set(key, value);
    return value;
  };
};
