import { z } from 'zod';
import { centimetres, litres, text } from './field.js';

const stick = {
  name: text('Name, as it is chosen by', 'upright drum'),
  stickMarksCm: centimetres('From mark to mark on the stick', 1),
  reference: text('Document and revision, or who measured it', 'fuel manual, dips, revision 1'),
};
const innerDiameterCm = centimetres('Diameter inside', 57.2);

const ownRowSchema = z
  .strictObject({ dipCm: centimetres('Wetted stick', 34), litres: litres('Litres', 87) })
  .meta({ id: 'DipRow', description: 'One line of a table of dips' });

export const dipTableSchema = z.discriminatedUnion(
  'kind',
  [
    z
      .strictObject({
        ...stick,
        kind: z.literal('upright drum').meta({ description: 'On its end', examples: ['upright drum'] }),
        innerDiameterCm,
        innerHeightCm: centimetres('Height inside', 84.1),
      })
      .meta({ id: 'UprightDrum', description: 'Litres by the stick in a drum on its end' }),
    z
      .strictObject({
        ...stick,
        kind: z.literal('lying drum').meta({ description: 'On its side, level', examples: ['lying drum'] }),
        innerDiameterCm,
        innerLengthCm: centimetres('Length inside', 84.1),
      })
      .meta({ id: 'LyingDrum', description: 'Litres by the stick in a drum on its side' }),
    z
      .strictObject({
        ...stick,
        kind: z.literal('own table').meta({ description: "The operator's own", examples: ['own table'] }),
        rows: z
          .array(ownRowSchema)
          .min(1)
          .meta({ description: 'From the bottom up; straight lines between them' }),
      })
      .meta({ id: 'OwnDipTable', description: 'Litres by the stick as the operator has measured them' }),
  ],
  'kind is "upright drum" (with innerDiameterCm and innerHeightCm), "lying drum" (with innerDiameterCm and innerLengthCm) or "own table" (with rows)',
);
