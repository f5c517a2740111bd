import {
  type KilogramsPerLitre,
  kilogramsFromPounds,
  type Litres,
  litres,
  type Pounds,
  pounds,
  volumeOf,
} from '@drumline/units';

/** Litres that somebody wrote down, beside what the aircraft's own gauge says went in. */
export interface GaugeCheck {
  readonly takenLb: Pounds;
  readonly gaugeLitres: Litres;
  readonly apartLitres: Litres;
  readonly agrees: boolean;
}

// What a meter and a gauge may differ by before anybody looks again. Common practice, no source.
const slackLitres = 5;
const slackShare = 0.03;

/**
 * A draw in litres against the engine fuel gauge before and after, in lb, by density. It says how far the two are apart,
 * never which is right. They agree within 5 L, or 3 % of the litres where that is more.
 */
export function checkGauge(
  drawn: Litres,
  gauge: { readonly beforeLb: Pounds; readonly afterLb: Pounds },
  density: KilogramsPerLitre,
): GaugeCheck {
  const takenLb = pounds(gauge.afterLb - gauge.beforeLb);
  const gaugeLitres = volumeOf(kilogramsFromPounds(takenLb), density);
  const apartLitres = litres(Math.abs(gaugeLitres - drawn));
  return {
    takenLb,
    gaugeLitres,
    apartLitres,
    agrees: apartLitres <= Math.max(slackLitres, drawn * slackShare),
  };
}
