import type { TestProject } from 'vitest/node';
import { startOffice } from './start-office.js';

declare module 'vitest' {
  export interface ProvidedContext {
    readonly officeUrl: string;
  }
}

/** One office for the run, for tests that only look. */
export default async function runOffice(project: TestProject): Promise<() => Promise<void>> {
  const { url, stop } = await startOffice();
  project.provide('officeUrl', url);
  return stop;
}
