const instant = (column: string): string =>
  `to_char(${column} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"')`;

// Drums of one delivery, sling or loading that were written down together are one entry. What a load report takes aboard
// is told by the report.
export const paperEntriesSql = `
  with entered as (
    select 'movement' as source, min(movements.id::text) as id, kind, means, flight,
      coalesce(place, data ->> 'place', data ->> 'to') as place,
      coalesce(array_agg(drum order by drum) filter (where drum is not null), '{}') as drums,
      min(data::text)::jsonb || jsonb_build_object('millilitres', sum((data ->> 'millilitres')::bigint)) as facts,
      happened_at, written_at, max(received_at) as received_at, data ->> 'by' as by, full_name as entered_by
    from movements left join accounts on accounts.id = account_id
    where received_at >= $1 and means in ('radio', 'paper') and data ->> 'by' <> 'opening of the ledger' and not (kind = 'loaded' and exists (
      select from flight_reports where flight_id = movements.flight and kind = 'load'
        and data -> 'drums' @> jsonb_build_array(jsonb_build_object('movement', movements.id))))
    group by kind, means, flight, place, data ->> 'place', data ->> 'from', data ->> 'to', data ->> 'condition',
      happened_at, written_at, data ->> 'by', full_name,
      case when kind in ('left at', 'brought home', 'loaded', 'slung') then '' else movements.id::text end

    union all
    select 'flight report', id::text, kind, data ->> 'means', flight_id, data ->> 'place',
      coalesce((select array_agg(loaded ->> 'drum') from jsonb_array_elements(data -> 'drums') loaded), '{}'),
      data, happened_at, (data ->> 'writtenAt')::timestamptz, received_at, author, sent_by
    from flight_reports where received_at >= $1 and data ->> 'means' in ('radio', 'paper')

    union all
    select 'surface report', surface_reports.id::text, 'surface',
      case when data ->> 'by' like '%, from paper' then 'paper' else 'radio' end, null, place, '{}', data,
      (data ->> 'at')::timestamptz, (data ->> 'at')::timestamptz, received_at,
      regexp_replace(data ->> 'by', ', (from paper|by radio)$', ''), full_name
    from surface_reports left join accounts on accounts.id = account_id
    where received_at >= $1 and account_id is not null
      and (data ->> 'by' like '%, from paper' or data ->> 'by' like '%, by radio')
  )
  select source, id, kind, means, flight, place, drums, facts, ${instant('happened_at')} as "happenedAt",
    ${instant('written_at')} as "writtenAt", ${instant('received_at')} as "enteredAt", by, entered_by as "enteredBy"
  from entered order by written_at, received_at, id limit $2`;

/** The last word that reached base before a moment, and the first one after it. */
export const silenceSql = `
  with heard as (
    select received_at as at from movements where account_id is not null
    union all select received_at from flight_reports
    union all select received_at from surface_reports where account_id is not null
    union all select at from flight_history
  )
  select ${instant('max(at) filter (where at <= $1)')} as "from",
    ${instant('min(at) filter (where at > $1)')} as "until"
  from heard`;
