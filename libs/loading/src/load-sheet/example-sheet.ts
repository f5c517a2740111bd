import { kilogramsPerLitre, minutes, pounds } from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';
import type { LoadSheet, LoadSheetRequest } from './load-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';

/** The sheet of that load, for the specs of this folder. */
export const sheetOf = (load: NamedLoad): LoadSheet => makeLoadSheet(exampleSheetRequest(load));

/** What that sheet is made from. */
export const exampleSheetRequest = (load: NamedLoad): LoadSheetRequest => ({
  flight: {
    id: 'F05',
    aircraft: 'B1',
    date: '2027-06-15',
    departs: '07:10',
    pilot: 'FW3',
    version: 3,
    replaces: 2,
  },
  load,
  landingHours: { timeZone: 'UTC', lastLanding: '20:00', daylightMarginMinutes: minutes(30) },
  alternates: [],
  goods: {
    set: null,
    others: [],
    citedApproval: null,
    approvalsOnFile: [],
  },
  tieDown: null,
  toleranceLb: pounds(10),
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
});
