import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { PeopleService } from '../../people/people.service.js';
import { refuseUnlessMay } from '../../people/permission.js';
import type { Flight } from '../store/flight.table.js';
import type { SentReport } from './flight-reports.service.js';

export interface ReportAuthor {
  readonly name: string;
  readonly raised: readonly string[];
}

/** Who reports, which stays so whoever sends it: somebody else may be signed in on the phone by the time there is a line. */
@Injectable()
export class ReportAuthorService {
  constructor(private readonly people: PeopleService) {}

  /** Throws unless the sender may enter it. What was flown is nobody's own: it is kept, and raised where it looks odd. */
  async authorOf(
    transaction: EntityManager,
    flight: Flight,
    { body, by }: Pick<SentReport, 'body' | 'by'>,
  ): Promise<ReportAuthor> {
    const name = body.by ?? by.fullName;
    const crews = name === by.fullName ? [by.crew] : await this.people.crewsNamed(transaction, name);
    const isCrew = flight.pilot !== null && crews.includes(flight.pilot);
    refuseUnlessMayEnter(flight, body, by, isCrew);
    const isOdd = !isCrew && !by.roles.includes('dispatcher') && body.kind !== 'load';
    const crew = flight.pilot === null ? 'nobody is named for it' : `${flight.pilot} is`;
    return { name, raised: isOdd ? [`${flight.id}: ${name} reports it and is not its crew; ${crew}.`] : [] };
  }
}

const refuseUnlessMayEnter = (
  flight: Flight,
  { kind, means }: SentReport['body'],
  by: Account,
  isCrew: boolean,
): void => {
  if (kind === 'load') {
    refuseUnlessMay(by, 'load', { to: 'enter', own: isCrew, within: isCrew ? ['as commander'] : [] });
    return;
  }
  const isByRadio = means === 'radio' || means === 'paper';
  refuseUnlessMay(by, 'delivery', { to: 'enter', within: isByRadio ? ['by radio'] : [] });
  if (kind === 'refuse' && !isCrew)
    throw new Problem(
      'not-allowed',
      `${flight.id} is not your flight: ${flight.pilot ?? 'nobody'} flies it.`,
    );
};
