/** Lines of lines.yaml that the program speaks by itself, by the place where it does. */
export const SPOKEN = {
  defer: 'defer',
  unknown: 'unknown-thing',
  unknownOther: 'unknown-other',
  airShort: 'air-short',
  airOver: 'air-over',
  airNoFan: 'air-no-fan',
  airMost: 'air-most',
  airNone: 'air-none',
  airOut: 'air-out',
  airNeverClears: 'air-never-clears',
  noGloveHolds: 'gloves-none-hold',
  gloveForAgent: 'glove-for-agent',
  glovesChangeAfter: 'gloves-change-after',
  glovesChangeNow: 'gloves-change-now',
  glovesChangeTorn: 'gloves-change-torn',
  bottleMilder: 'bottle-milder',
  bottleUsed: 'bottle-used',
  useHarms: 'use-harms',
  notCovered: 'not-covered',
  agentHow: 'agent-how',
  tool: 'tool',
  toolFor: 'tool-for',
  stuck: {
    'unknown-ink': 'tool-stuck-unknown-ink',
    'unknown-surface': 'tool-stuck-unknown-surface',
    'parts-share-no-agent': 'tool-stuck-parts',
    'all-harm': 'tool-stuck-harm',
    'not-at-hand': 'tool-stuck-hand',
  },
  noSurfaces: 'no-surfaces',
  noMixes: 'no-mixes',
  noAgent: 'no-agent',
  wipesRule: 'wipes-rule',
  ragsReady: 'rags-ready',
  wasteCodes: 'waste-codes',
  wasteAsk: 'waste-ask',
  usedSpirit: 'used-spirit',
  usedSpiritNoCode: 'used-spirit-ask',
  call: 'aid-call',
  doors: {
    eye: 'aid-eye',
    skin: 'aid-skin',
    swallowed: 'aid-swallowed',
    breathed: 'aid-breathed',
    spill: 'aid-spill',
    fire: 'aid-fire',
  },
} as const;

/** Lines that rules print once for each thing they speak of, with that thing's figures. */
export const PER_THING = {
  doseAboveUsual: 'dose-check',
  doseAboveHighest: 'dose-stop',
  unknownEquipment: 'unknown-machine',
  unknownPerson: 'ask-first',
} as const;

/** All of them: lines.yaml must have each. */
export const SPOKEN_TEXTS: readonly string[] = [
  ...Object.values(SPOKEN).flatMap((text) =>
    typeof text === 'string' ? text : Object.values(text),
  ),
  ...Object.values(PER_THING),
];
