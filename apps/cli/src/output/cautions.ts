/** Stands at the foot of every plan and payload. */
export const cautions = [
  "Planning figures. The approved flight manual, the operator's limits, local rules and the pilot in command decide.",
  'Dangerous-goods and fuel-quality rules of the place apply.',
];
