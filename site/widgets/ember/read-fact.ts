import { celsius, readAnswer } from '#engine';
import type { Facts } from './facts.ts';

/** How a typed fact was read: its value in the fact's unit [°C or s], or what is missing. */
export interface FactReading {
  value?: number;
  /** 'read as 38 °C', or what is missing; empty while nothing is typed. */
  says: string;
}

/** Reads a fact as typed. The field already names °C, so a bare number is one; a bare number of time is asked about. */
export function readFact(key: keyof Facts, typed: string): FactReading {
  const time = key === 'share';
  const kind = time ? 'time' : 'temperature';
  const first = readAnswer(typed, kind);
  const reading = !time && first.status === 'unit missing' ? readAnswer(`${typed} °C`, kind) : first;
  switch (reading.status) {
    case 'empty':
      return { says: '' };
    case 'read':
      return { value: time ? reading.value : Number(celsius(reading.value).toFixed(6)), says: reading.readAs };
    case 'unit missing':
      return { says: 'Minutes or seconds? Write it like 3:30 or 210 s.' };
    default:
      return { says: reading.says };
  }
}
