import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { formatTables, scenarioJsonSchema } from '@drumline/contract';
import { expect, it } from 'vitest';

// `npm run scenario-docs` writes both files anew.
const docs = (name: string) => fileURLToPath(new URL(`../../docs/${name}`, import.meta.url));

it('docs/scenario.schema.json is the schema that the reader uses', async () => {
  const schema = `${JSON.stringify(scenarioJsonSchema(), null, 2)}\n`;
  await expect(schema).toMatchFileSnapshot(docs('scenario.schema.json'));
});

it('docs/scenario-format.md has the tables of the schema', async () => {
  const [before, , after] = readFileSync(docs('scenario-format.md'), 'utf8').split(
    /(?<=<!-- tables: .* -->\n)([\s\S]*)(?=<!-- end of tables -->)/,
  );
  await expect(`${before}\n${formatTables()}\n${after}`).toMatchFileSnapshot(docs('scenario-format.md'));
});
