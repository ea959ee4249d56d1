/** Class of a liquid under three systems, from closed-cup flash point and initial boiling point. */
export interface FlammableClass {
  /** CLP (EU, GB): 1 to 3, or none. */
  readonly clp: { readonly category: 1 | 2 | 3 | null; readonly code: string | null };
  /** UN GHS and OSHA 1910.106: 1 to 4, or none. */
  readonly ghs: { readonly category: 1 | 2 | 3 | 4 | null; readonly code: string | null };
  readonly nfpa: { readonly class: 'IA' | 'IB' | 'IC' | 'II' | 'IIIA' | 'IIIB' };
}

const CLP_CODE = { 1: 'H224', 2: 'H225', 3: 'H226', 4: 'H227' } as const;

const fahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;

/**
 * The flammable-liquid classes of a liquid. Degrees Celsius. An unknown boiling point is
 * taken as low (the more careful class).
 * Sources: CLP (EC) 1272/2008 Annex I table 2.6.1 (flash < 23 and boiling <= 35: 1; < 23: 2;
 * <= 60: 3); UN GHS and 29 CFR 1910.106(a)(19) (the same, and <= 93: 4); NFPA 30 in degrees
 * Fahrenheit (< 73 and boiling < 100: IA; < 73: IB; < 100: IC; < 140: II; < 200: IIIA; else IIIB).
 * @example flammableClass({ flashPointC: 39, boilingPointC: 154 }).nfpa.class // 'II'
 */
export const flammableClass = (liquid: {
  readonly flashPointC: number;
  readonly boilingPointC?: number | undefined;
}): FlammableClass => {
  const { flashPointC: flash, boilingPointC: boiling } = liquid;
  const ghs = ghsCategory(flash, boiling);
  const clp = ghs === 4 ? null : ghs;
  return {
    clp: { category: clp, code: clp === null ? null : CLP_CODE[clp] },
    ghs: { category: ghs, code: ghs === null ? null : CLP_CODE[ghs] },
    nfpa: { class: nfpaClass(flash, boiling) },
  };
};

const ghsCategory = (flash: number, boiling: number | undefined): 1 | 2 | 3 | 4 | null => {
  if (flash < 23) return boiling === undefined || boiling <= 35 ? 1 : 2;
  if (flash <= 60) return 3;
  return flash <= 93 ? 4 : null;
};

const nfpaClass = (
  flashC: number,
  boilingC: number | undefined,
): FlammableClass['nfpa']['class'] => {
  // Compared in whole tenths of a degree Fahrenheit, so that 60 C is 140 F and not 139.99.
  const flash = Math.round(fahrenheit(flashC) * 10) / 10;
  if (flash < 73) {
    return boilingC === undefined || fahrenheit(boilingC) < 100 ? 'IA' : 'IB';
  }
  if (flash < 100) return 'IC';
  if (flash < 140) return 'II';
  return flash < 200 ? 'IIIA' : 'IIIB';
};
