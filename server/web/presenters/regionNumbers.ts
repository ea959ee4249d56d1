import type { EmergencyNumber, Region } from '../../reasoning/index.js';
import { inside, longDate } from '../../words/index.js';

interface NumberView {
  readonly name: string;
  readonly number: string;
  /** Rings it; empty where nobody knows a number. */
  readonly href: string;
  readonly hours: string;
}

/** The numbers to ring in a region, and when they were last looked up. */
export interface RegionNumbersView {
  readonly region: string;
  readonly emergency: readonly NumberView[];
  readonly poison: readonly NumberView[];
  /** Those of them to ring first, as the region's own words name them: no police, no text lines. */
  readonly ringFirst: readonly NumberView[];
  readonly poisonFirst: readonly NumberView[];
  /** The region's words where they name no poison number; empty where they do. */
  readonly poisonElse: string;
  readonly checkedOn: string;
  readonly checkedIn: string;
}

/** The numbers of a region as they are shown; digits become a link that rings them. */
export function regionNumbers(region: Region): RegionNumbersView {
  const emergency = region.emergency.map(numberView);
  const poison = region.poison.map(numberView);
  const poisonFirst = poison.filter(({ number }) => region.poisonCall.includes(number));
  return {
    region: region.name,
    emergency,
    poison,
    ringFirst: emergency.filter(({ number }) => region.call.includes(number)),
    poisonFirst,
    poisonElse: poisonFirst.length > 0 ? '' : region.poisonCall,
    checkedOn: longDate(region.checkedOn),
    checkedIn: inside(region.checkedIn).replace(/\.$/, ''),
  };
}

function numberView(one: EmergencyNumber): NumberView {
  const digits = one.number.replace(/[^+\d]/g, '');
  return {
    name: one.name,
    number: one.number,
    href: digits === '' ? '' : `tel:${digits}`,
    hours: one.hours ?? '',
  };
}
