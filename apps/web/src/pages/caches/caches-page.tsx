import { useCalendar } from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { EmptyLine, TitleBlock } from '../../ui/index.js';

export const CachesPage = (_: PageProps) => {
  const { date, today } = useCalendar();
  return (
    <>
      <TitleBlock title="Caches" sub={date(today)} />
      <div className="work">
        <EmptyLine>This page is being built.</EmptyLine>
      </div>
    </>
  );
};
