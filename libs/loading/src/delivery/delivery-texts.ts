import { conditionWords, type DeliveredDrum, type DeliveryReport } from './delivery-report.js';

/** Signs that one text message carries. */
const mostSigns = 160;

/**
 * A delivery as text messages of at most 160 signs, usually one:
 * "F06/1 GAN 2027-06-15 0805 LEFT 0573 0574 0575 BACK 0576 SEAL SURFACE DRY BY FW1".
 * Each message can be read by itself; the drums are spread over as few as hold them.
 * Throws a RangeError when not even one drum fits beside the names.
 */
export function deliveryTexts(report: DeliveryReport): readonly string[] {
  const drums = [
    ...report.left.map((drum) => ({ drum, where: 'left' as const })),
    ...report.back.map((drum) => ({ drum, where: 'back' as const })),
  ];
  const messages: DeliveryReport[] = [];
  let message: DeliveryReport = { ...report, left: [], back: [] };
  for (const { drum, where } of drums) {
    const longer = { ...message, [where]: [...message[where], drum] };
    if (textOf(longer).length > mostSigns) {
      messages.push(message);
      message = { ...report, left: [], back: [], [where]: [drum] };
    } else message = longer;
  }
  const texts = [...messages, message].map(textOf);
  const tooLong = texts.find((text) => text.length > mostSigns);
  if (tooLong !== undefined)
    throw new RangeError(
      `A delivery text takes ${mostSigns} signs, this one has ${tooLong.length}: shorten the names.`,
    );
  return texts;
}

function textOf({ flight, leg, place, date, time, left, back, surface, by }: DeliveryReport): string {
  return [
    `${flight}/${leg}`,
    place,
    date,
    time.replace(':', ''),
    ...section('LEFT', left),
    ...section('BACK', back),
    ...(surface === null ? [] : ['SURFACE', surface]),
    'BY',
    by,
  ]
    .join(' ')
    .toUpperCase();
}

const section = (word: string, drums: readonly DeliveredDrum[]): string[] =>
  drums.length === 0
    ? []
    : [
        word,
        ...drums.flatMap(({ number, condition }) => {
          const said = conditionWords.find(([name]) => name === condition);
          return said ? [number, said[1]] : [number];
        }),
      ];
