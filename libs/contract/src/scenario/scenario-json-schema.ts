import { z } from 'zod';
import { scenarioSchema } from './scenario-schema.js';

/** The scenario document as JSON Schema (draft 2020-12), for editors and other programs. */
export const scenarioJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(scenarioSchema, { io: 'input' });
