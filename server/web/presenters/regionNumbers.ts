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
  readonly checkedOn: string;
  readonly checkedIn: string;
}

/** The numbers of a region as they are shown; digits become a link that rings them. */
export function regionNumbers(region: Region): RegionNumbersView {
  return {
    region: region.name,
    emergency: region.emergency.map(numberView),
    poison: region.poison.map(numberView),
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
