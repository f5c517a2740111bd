/** A figure with its unit, thousands apart: `66,500 lb`. */
export const printFigure = (figure: number, unit: string): string => {
  const [whole = '', part] = String(figure).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${part === undefined ? grouped : `${grouped}.${part}`} ${unit}`;
};
