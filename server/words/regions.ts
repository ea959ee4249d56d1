import type { Catalogue, EmergencyNumber, FirstAid, Region } from '../reasoning/index.js';
import { fill, makeTemplate, type Template } from './fill.js';
import { joined, sentence } from './joined.js';
import { numberText } from './amounts.js';

export interface FirstAidWords {
  readonly id: string;
  readonly door: FirstAid['door'];
  readonly name: string;
  readonly steps: readonly string[];
  readonly never: readonly string[];
}

interface EmergencyWords {
  readonly region: string;
  readonly numbers: readonly EmergencyNumber[];
  readonly poison: readonly EmergencyNumber[];
  readonly checkedOn: string;
  readonly checkedIn: string;
}

export interface RegionWords {
  readonly firstAid: (regionId: string) => readonly FirstAidWords[];
  readonly emergency: (regionId: string) => EmergencyWords;
  /** Who and what comes before this program. */
  readonly defer: (regionId: string) => readonly string[];
}

/** What a line may say of the region without being given it; undefined when it says no such thing. */
export function regionText(region: Region, key: string): string | undefined {
  switch (key) {
    case 'region':
      return region.name;
    case 'emergency':
      return region.call;
    case 'poison':
      return region.poisonCall;
    case 'date':
      return region.checkedOn;
    case 'minutes':
      return numberText(region.flushMinutes);
    case 'authorities':
      return joined(region.deferTo.map((one) => one.phrase));
    case 'authority':
      return region.deferTo.find((one) => one.role === 'waste')?.phrase;
    case 'solventFire':
      return region.fire.solvent;
    case 'ragFire':
      return region.fire.oilRag;
    case 'label':
      return region.wipes?.label;
    case 'days':
      return region.wipes && numberText(region.wipes.days);
    default:
      return undefined;
  }
}

/** What differs by region; each region's words are made once, at the start. */
export function makeRegions(
  catalogue: Catalogue,
  regionOf: (regionId: string) => Region,
): RegionWords {
  const rows = catalogue.firstAid.map((row) => ({
    row,
    steps: row.steps.map(makeTemplate),
    never: (row.never ?? []).map(makeTemplate),
  }));
  const firstAidOf = (region: Region): readonly FirstAidWords[] => {
    const say = (template: Template) => fill(template, ({ key }) => regionText(region, key) ?? key);
    return rows.map(({ row, steps, never }) => ({
      id: row.id,
      door: row.door,
      name: row.name,
      steps: steps.map(say),
      never: never.map(say),
    }));
  };
  const firstAid = new Map(catalogue.regions.map((region) => [region, firstAidOf(region)]));
  return {
    firstAid: (regionId) => firstAid.get(regionOf(regionId)) ?? [],
    emergency: (regionId) => {
      const region = regionOf(regionId);
      const { name, emergency, poison, checkedOn, checkedIn } = region;
      return { region: name, numbers: emergency, poison, checkedOn, checkedIn };
    },
    defer: (regionId) => [
      'Data sheets and local rules come before this page.',
      ...regionOf(regionId).deferTo.map(({ role, phrase }) => sentence(`${role}: ${phrase}`)),
    ],
  };
}
