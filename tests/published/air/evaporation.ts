import { z } from 'zod';
import {
  diffusivityM2S,
  G_IN_LB,
  liquidFactor,
  M2_IN_FT2,
  M3_PER_HOUR_IN_CFM,
  M_IN_FT,
  massTransfer,
  mgM3ToPpm,
  mixingFactorOf,
  molarVolume,
  openSurfaceGS,
  outdoorPoolGS,
  PA_IN_MM_HG,
  penetrationGS,
  penetrationPoundsGS,
  penetrationShortGS,
  ppmToMgM3,
  roomPpm,
  spillMgM3,
} from '../../../server/reasoning/index.js';
import { aCheck } from '../aCheck.js';

const number = z.number();
const numbers = z.array(number);
const S_IN_HOUR = 3600;
const MIN_IN_HOUR = 60;
const celsius = (kelvin: number): number => kelvin - 273.15;

/** How fast liquids evaporate: answered by the project's own functions; only units are changed here. */
export const evaporationChecks = {
  'open tank, US': aCheck(
    z.strictObject({
      diameterFt: number,
      kelvin: number,
      mmHg: number,
      molarMassGMol: number,
      cfm: number,
      efficiency: numbers,
    }),
    ({ diameterFt, kelvin, mmHg, molarMassGMol, cfm, efficiency }) => {
      const gS = openSurfaceGS({
        molarMassGMol,
        vapourPressurePa: mmHg * PA_IN_MM_HG,
        temperatureC: celsius(kelvin),
        areaM2: (Math.PI / 4) * (diameterFt * M_IN_FT) ** 2,
      });
      const litresHour =
        (gS / molarMassGMol) * molarVolume({ temperatureC: celsius(kelvin) }) * S_IN_HOUR;
      return {
        ftPerMin: (massTransfer(molarMassGMol) / M_IN_FT) * MIN_IN_HOUR,
        lbPerMin: (gS * MIN_IN_HOUR) / G_IN_LB,
        ppm: efficiency.map((each) =>
          roomPpm(litresHour / 1000, {
            flow: cfm * M3_PER_HOUR_IN_CFM,
            mixingFactor: mixingFactorOf(each) ?? 0,
          }),
        ),
      };
    },
  ),
  'open surface': aCheck(
    z.strictObject({ areaM2: number, kelvin: number, pa: number, molarMassGMol: number }),
    ({ areaM2, kelvin, pa, molarMassGMol }) => ({
      mPerSec: massTransfer(molarMassGMol),
      gPerSec: openSurfaceGS({
        areaM2,
        molarMassGMol,
        vapourPressurePa: pa,
        temperatureC: celsius(kelvin),
      }),
    }),
  ),
  'pool outdoors': aCheck(
    z.strictObject({
      molarMassGMol: number,
      mmHg: number,
      kelvin: number,
      pounds: number,
      ft2PerPound: number,
      windFactor: number,
    }),
    ({ molarMassGMol, mmHg, kelvin, pounds, ft2PerPound, windFactor: wind }) => {
      const surface = {
        molarMassGMol,
        vapourPressurePa: mmHg * PA_IN_MM_HG,
        temperatureC: celsius(kelvin),
        areaM2: pounds * ft2PerPound * M2_IN_FT2,
      };
      return {
        liquidFactor: liquidFactor(surface),
        lbPerMin: (outdoorPoolGS(surface, wind) * MIN_IN_HOUR) / G_IN_LB,
      };
    },
  ),
  'moving air over a liquid': aCheck(
    z.strictObject({
      molarMassGMol: number,
      mmHg: number,
      kelvin: number,
      ftPerMin: number,
      lengthCm: number,
      areaCm2: number,
    }),
    ({ molarMassGMol, mmHg, kelvin, ftPerMin, lengthCm, areaCm2 }) => {
      const surface = {
        molarMassGMol,
        vapourPressurePa: mmHg * PA_IN_MM_HG,
        temperatureC: celsius(kelvin),
        areaM2: areaCm2 / 1e4,
      };
      const over = { airSpeedMS: (ftPerMin * M_IN_FT) / MIN_IN_HOUR, lengthM: lengthCm / 100 };
      return {
        spreadCm2PerSec: diffusivityM2S(molarMassGMol, celsius(kelvin)) * 1e4,
        shortGPerSec: penetrationShortGS(surface, over),
        gPerSec: penetrationGS(surface, over),
        poundsGPerSec: penetrationPoundsGS(surface, over),
      };
    },
  ),
  'all of a spill': aCheck(
    z.strictObject({
      ml: number,
      densityKgL: number,
      molarMassGMol: number,
      sidesM: numbers,
      molarVolumeLMol: number,
    }),
    ({ ml, densityKgL, molarMassGMol, sidesM, molarVolumeLMol }) => {
      const volumeM3 = sidesM.reduce((volume, side) => volume * side, 1);
      const mgM3 = spillMgM3({ ml, densityKgL, volumeM3 });
      return {
        mgM3,
        mgM3InPpm: ppmToMgM3(1, molarMassGMol, molarVolumeLMol),
        ppm: mgM3ToPpm(mgM3, molarMassGMol, molarVolumeLMol),
      };
    },
  ),
} as const;
