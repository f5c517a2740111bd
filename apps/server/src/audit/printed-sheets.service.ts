import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';

/** What the audit tells of load sheets on paper. */
@Injectable()
export class PrintedSheetsService {
  constructor(private readonly database: DataSource) {}

  /** Check codes that a version was printed with, alone or in a day pack, the first print first. */
  async codesOf(flight: string, version: number): Promise<readonly string[]> {
    const rows: readonly { readonly code: string }[] = await this.database.query(codesSql, [flight, version]);
    return rows.map(({ code }) => code);
  }
}

/** A demo that was removed may have had a flight of the same name: what was printed before its end is not of this one. */
const codesSql = `
  select sheet ->> 'checkCode' as code from (
    select id, jsonb_array_elements(detail -> 'sheets') as sheet
      from audit_entries where did = 'printed' and detail ? 'sheets'
    union all
    select id, detail || jsonb_build_object('flight', $1::text)
      from audit_entries where did = 'printed' and subject = 'load sheet ' || $1
  ) printed
  where sheet ->> 'flight' = $1 and (sheet ->> 'version')::integer = $2
    and id > coalesce((select max(id) from audit_entries where did = 'removed' and subject = 'demo territory'), 0)
  group by code order by min(id)`;
