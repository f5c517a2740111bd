import type { NamedProgram } from './named-program.js';

/** Components of a blend: common qualities, then the qualities that a grade adds, in the order of `perGrade`. */
const components = {
  BAL: {
    qualities: [6, 4, 50.3],
    E: [98.70277, 94.63568, 102.02191, 98.08976, 103.0581, 99.18559],
    P: [96.13556, 91.96313],
    R: [99.19039, 95.17073, 101.0885, 97.11016, 103.0581, 99.18559],
  },
  BHC: {
    qualities: [-2, 0.5, -15.6],
    E: [92.89535, 79.40534, 94.57094, 81.47009, 95.02163, 82.04308],
    P: [90.99637, 78.09095],
    R: [93.16124, 79.72867, 94.14769, 80.94047, 95.02163, 82.04308],
  },
  BLC: {
    qualities: [7, 4.5, 57.9],
    E: [95.38345, 80.37873, 97.97965, 83.22026, 98.64634, 83.9937],
    P: [93.95665, 80.74635],
    R: [95.80861, 80.82888, 97.34183, 82.49926, 98.64634, 83.9937],
  },
  BLV: {
    qualities: [14, 7.2, 102.3],
    E: [82.8797, 80.36789, 87.33298, 84.5191, 88.46612, 85.61385],
    P: [79.78002, 77.37441],
    R: [83.61375, 81.03825, 86.24515, 83.48458, 88.46612, 85.61385],
  },
  BN4: {
    qualities: [80, 70, 113],
    E: [97.32996, 92.71594, 100.65, 96.86628, 101.66321, 98.06433],
    P: [94.11062, 88.35436],
    R: [97.86876, 93.41749, 99.77765, 95.86635, 101.66321, 98.06433],
  },
  BP8: {
    qualities: [4, 3.6, 28.9],
    E: [101.17309, 90.03844, 102.21363, 91.26611, 102.51818, 91.62642],
    P: [99.83178, 88.58029],
    R: [101.32905, 90.22411, 101.93754, 90.94112, 102.51818, 91.62642],
  },
  BTO: {
    qualities: [-1, 1.2, 5],
    E: [105.47666, 89.10432, 106.21918, 90.14887, 106.46719, 90.49629],
    P: [105.07558, 88.18188],
    R: [105.58392, 89.25587, 106.0019, 89.84584, 106.46719, 90.49629],
  },
} as const;

const perGrade = {
  E: ['HRL', 'HML', 'HRM', 'HMM', 'HRH', 'HMH'],
  P: ['WRO', 'WMO'],
  R: ['HRL', 'HML', 'HRM', 'HMM', 'HRH', 'HMH'],
} as const;

const grades = ['E', 'P', 'R'] as const;

const blending = Object.entries(components).flatMap(([component, of]) =>
  grades.map((grade) => [
    `${component}.3${grade}`,
    {
      [component]: -1,
      [`B3${grade}.VO`]: 1,
      [`XCV.3${grade}`]: of.qualities[0],
      [`XRV.3${grade}`]: of.qualities[1],
      [`X12.3${grade}`]: of.qualities[2],
      ...Object.fromEntries(perGrade[grade].map((row, at) => [`${row}.3${grade}`, of[grade][at]!])),
    },
  ]),
);

const rows = (relation: '<=' | '>=' | '=', names: string) =>
  Object.fromEntries(names.split(' ').map((name) => [name, [relation, 0] as const]));

/** Netlib LP test set, kb2: blending, 43 rows, 41 columns, ill-scaled. As distributed with the set. */
export const kb2: NamedProgram = {
  rows: {
    ...rows('=', 'BAL BHC BLC BLV BN4 BP8 BTO B3E B3P B3R B3T B3E.VO B3P.VO B3R.VO WMO.3P WRO.3P'),
    ...rows('>=', 'HMH.3E HML.3E HMM.3E HRH.3E HRL.3E HRM.3E HMH.3R HML.3R HMM.3R HRH.3R HRL.3R HRM.3R'),
    ...rows('>=', 'NOI.3E NOI.3P NOI.3R'),
    ...rows('<=', 'XPB.3A XCV.3E XPB.3E XRV.3E X12.3E XCV.3P XRV.3P X12.3P XCV.3R XPB.3R XRV.3R X12.3R'),
  },
  columns: {
    ...Object.fromEntries(blending),
    D3T: { B3T: -1, cost: -16.5 },
    EAL: { BAL: 1 },
    EHC: { BHC: 1 },
    ELC: { BLC: 1 },
    ELV: { BLV: 1 },
    EN4: { BN4: 1, cost: 12 },
    EP8: { BP8: 1 },
    ETO: { BTO: 1, cost: 16 },
    M3T: { B3T: 1, B3E: -0.29, B3P: -0.17, B3R: -0.54 },
    QPB3E: {
      cost: 0.08757,
      'XPB.3E': 1,
      'HRL.3E': 2.52143,
      'HML.3E': 3.42918,
      'HRM.3E': 1.54954,
      'HMM.3E': 1.55751,
      'HRH.3E': 1.27141,
      'HMH.3E': 1.23842,
      'XPB.3A': 1,
    },
    QVO3E: {
      B3E: 1,
      'B3E.VO': -1,
      'XCV.3E': -16,
      'XRV.3E': -12,
      'X12.3E': -61,
      'NOI.3E': -107.52,
      'XPB.3E': -1.7,
      'HRL.3E': -1.00857,
      'HML.3E': -1.37167,
      'HRM.3E': -2.0144,
      'HMM.3E': -2.02477,
      'HRH.3E': -2.16139,
      'HMH.3E': -2.10531,
      'XPB.3A': -1.5,
    },
    QVO3P: {
      B3P: 1,
      'B3P.VO': -1,
      'XCV.3P': -16,
      'XRV.3P': -12,
      'X12.3P': -61,
      'NOI.3P': -97.41,
      'XPB.3A': -1.5,
    },
    QPB3R: {
      cost: 0.08757,
      'XPB.3R': 1,
      'HRL.3R': 4.31949,
      'HML.3R': 4.41873,
      'HRM.3R': 2.62696,
      'HMM.3R': 2.74531,
      'HRH.3R': 1.64391,
      'HMH.3R': 1.75028,
      'XPB.3A': 1,
    },
    QVO3R: {
      B3R: 1,
      'B3R.VO': -1,
      'XCV.3R': -16,
      'XRV.3R': -12,
      'X12.3R': -61,
      'NOI.3R': -98.5,
      'XPB.3R': -1.7,
      'HRL.3R': -2.15975,
      'HML.3R': -2.20937,
      'HRM.3R': -2.62696,
      'HMM.3R': -2.74531,
      'HRH.3R': -2.79464,
      'HMH.3R': -2.97548,
      'XPB.3A': -1.5,
    },
    WMO3E: { 'NOI.3E': 0.73, 'HML.3E': -1, 'HMM.3E': -1, 'HMH.3E': -1 },
    WRO3E: { 'NOI.3E': 0.41, 'HRL.3E': -1, 'HRM.3E': -1, 'HRH.3E': -1 },
    WMO3P: { 'WMO.3P': -1, 'NOI.3P': 0.84 },
    WRO3P: { 'WRO.3P': -1, 'NOI.3P': 0.27 },
    WMO3R: { 'NOI.3R': 0.81, 'HML.3R': -1, 'HMM.3R': -1, 'HMH.3R': -1 },
    WRO3R: { 'NOI.3R': 0.31, 'HRL.3R': -1, 'HRM.3R': -1, 'HRH.3R': -1 },
  },
  upper: { 'BHC.3E': 10, D3T: 200, EAL: 10, EHC: 20, ELC: 25, ELV: 12, EN4: 100, EP8: 35, ETO: 5 },
};
