import './plan.css';
import { Link } from 'wouter';
import { useCalendar, useList, useSettings } from '../../../api/index.js';
import { type Column, EmptyLine, Lines, Picture, Qty, TitleBlock } from '../../../ui/index.js';
import { BackToWeek, RePlan } from './plan-acts.js';
import { isUnderWay, type ListedPlan, listedPlanSchema } from './plan-read.js';
import { gapWords, stateOf, targetWords } from './plan-words.js';

/** Every run, the latest first: to open, and to compare with what stood. */
export const PlansPage = () => {
  const read = useList('/api/plans', listedPlanSchema);
  const columns = useColumns();
  return (
    <>
      <TitleBlock
        title="Plans"
        sub="the latest first"
        acts={
          <>
            <RePlan kind="main" />
            <BackToWeek />
          </>
        }
      />
      <div className="work">
        <Picture read={read}>
          {(plans) =>
            plans.length === 0 ? (
              <EmptyLine>No plan has been asked for yet.</EmptyLine>
            ) : (
              <Lines
                caption="Plans"
                captionUnseen
                rows={plans}
                columns={columns}
                keyOf={({ id }) => id}
                numbered
              />
            )
          }
        </Picture>
      </div>
    </>
  );
};

const useColumns = (): readonly Column<ListedPlan>[] => {
  const { when } = useCalendar();
  const currency = useSettings().value?.data.currency ?? '';
  return [
    {
      head: 'By the facts of',
      heads: true,
      cell: (plan) => <Link href={`/week/compare/${plan.id}`}>{when(plan.asOf)}</Link>,
    },
    { head: 'Asked for by', cell: ({ requestedByName }) => requestedByName },
    { head: 'Why', cell: ({ request }) => request.note ?? '' },
    { head: 'Target', wide: true, cell: ({ request }) => targetWords(request.endTarget) },
    {
      head: 'State',
      cell: (plan) => (
        <>
          {stateOf(plan)}
          {plan.number !== null && `, plan ${plan.number}, by ${plan.acceptedByName}`}
        </>
      ),
    },
    {
      head: 'Flight cost',
      figures: true,
      cell: ({ cost }) => cost !== null && <Qty value={cost.flight / 100} unit={currency} />,
    },
    {
      head: 'Whole plan',
      figures: true,
      cell: ({ cost }) => cost !== null && <Qty value={cost.total / 100} unit={currency} />,
    },
    {
      head: 'Could be saved',
      figures: true,
      cell: (plan) => (isUnderWay(plan) || plan.cost === null ? '' : gapWords(plan, currency)),
    },
  ];
};
