import { useMay } from '../../../api/index.js';
import { CsvPanel } from './csv-panel.js';

/** What goes in and out as files of a spreadsheet, or whole. */
export const FilesPage = () => {
  const mayExport = useMay()('import and export', 'enter');
  return (
    <div className="set-up-files">
      <CsvPanel of="helicopter-tasks" title="Helicopter tasks" />
      <CsvPanel of="drums" title="Drums received" />
      {mayExport && (
        <section className="section">
          <h2>The whole territory</h2>
          <p className="read">
            As a scenario document: places, limits, aircraft, crews, programme, rules, and the stock of now.
          </p>
          <a href="/api/scenario" download="territory.json">
            Download the scenario document
          </a>
        </section>
      )}
    </div>
  );
};
