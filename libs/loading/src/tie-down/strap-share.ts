/** How a strap lies: above the floor, and in plan off the aeroplane's long axis; in degrees. */
export interface StrapAngles {
  readonly aboveFloorDeg: number;
  readonly offAxisDeg: number;
}

/** What share of a strap's load holds along, across and down, 0 to 1. */
export interface StrapShare {
  readonly along: number;
  readonly across: number;
  readonly up: number;
}

/** Geometry of a straight strap: cos cos along, cos sin across, sin against lifting. */
export function strapShare({ aboveFloorDeg, offAxisDeg }: StrapAngles): StrapShare {
  const above = (aboveFloorDeg * Math.PI) / 180;
  const off = (offAxisDeg * Math.PI) / 180;
  return {
    along: Math.cos(above) * Math.cos(off),
    across: Math.cos(above) * Math.sin(off),
    up: Math.sin(above),
  };
}
