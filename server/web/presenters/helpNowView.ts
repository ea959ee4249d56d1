import type { Catalogue, FirstAid } from '../../reasoning/index.js';
import type { FirstAidWords, Words } from '../../words/index.js';
import { byId } from './byId.js';
import { frameOf, type FrameView } from './frame.js';
import { regionNumbers, type RegionNumbersView } from './regionNumbers.js';

/** Something went wrong: six doors, the numbers of the region, nothing else. */
export interface HelpNowView {
  readonly frame: FrameView;
  readonly numbers: RegionNumbersView;
  readonly doors: readonly DoorView[];
  readonly regions: readonly {
    readonly name: string;
    readonly href: string;
    readonly isHere: boolean;
  }[];
}

interface DoorView {
  readonly id: FirstAid['door'];
  readonly titleKey: string;
  readonly drawing: string;
  readonly cases: readonly {
    readonly name: string;
    readonly href: string;
    readonly steps: readonly string[];
    readonly never: readonly string[];
  }[];
}

/** What cannot wait stands first. */
const DOORS: readonly FirstAid['door'][] = [
  'eye',
  'skin',
  'breathed',
  'swallowed',
  'fire',
  'spill',
];

/** `fallback` is the region whose numbers are shown when none, or an unknown one, is asked for. */
export function helpNowView(
  regionId: string,
  context: { readonly catalogue: Catalogue; readonly words: Words; readonly fallback: string },
): HelpNowView {
  const { catalogue, words, fallback } = context;
  const region = byId(catalogue.regions, regionId) ?? byId(catalogue.regions, fallback);
  if (!region) throw new RangeError(`no region called ${fallback}`);
  return {
    frame: frameOf('help', { key: 'help.title' }, { region: region.id }),
    numbers: regionNumbers(region),
    doors: DOORS.map((door) => doorView(door, words.firstAid(region.id))),
    regions: catalogue.regions.map(({ id, name }) => ({
      name,
      href: `/help-now?in=${encodeURIComponent(id)}`,
      isHere: id === region.id,
    })),
  };
}

function doorView(door: FirstAid['door'], rows: readonly FirstAidWords[]): DoorView {
  return {
    id: door,
    titleKey: `door.${door}`,
    drawing: `doors/${door}`,
    cases: rows
      .filter((row) => row.door === door)
      .map(({ id, name, steps, never }) => ({
        name,
        href: `/rules/first-aid.${encodeURIComponent(id)}`,
        steps,
        never,
      })),
  };
}
