import { type Draw, type Drawn, litresOf } from '@drumline/stock';
import { addDays, type IsoDate, instantOf } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';

/** A draw that happened, with its programme in `for`. */
export interface DrawnLitres extends Draw {
  readonly drum: string;
}

/** What has been drawn. */
@Injectable()
export class DrawnService {
  constructor(private readonly database: DataSource) {}

  /** Routine draws of a local day at some places that stand: one taken back has left no step in the life of its drum. */
  async on(day: IsoDate, places: readonly string[], timeZone: string): Promise<readonly DrawnLitres[]> {
    if (places.length === 0) return [];
    const [from, until] = [day, addDays(day, 1)].map((date) => instantOf(date, '00:00', timeZone));
    const rows: readonly { readonly data: Drawn }[] = await this.database.query(
      `select data from movements
       where place = any($1) and kind = 'drawn' and happened_at >= $2 and happened_at < $3
         and data ->> 'medevac' is null
         and exists (select from drum_steps where drum_steps.place = movements.place and movement = movements.id)
       order by happened_at, id`,
      [[...new Set(places)], from, until],
    );
    return rows.map(({ data: { place, drum, programme, millilitres } }) => ({
      date: day,
      place,
      drum,
      for: programme,
      litres: litresOf(millilitres),
    }));
  }
}
