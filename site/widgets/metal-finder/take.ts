import type { FoundOnLead } from '#engine';
import { fixed, type Practice, quantity, temperature, thin } from '../../lib/format.ts';
import type { Accepts } from '../figure/ask-text.ts';
import { lengthWords } from '../figure/length-words.ts';
import { markedWords } from './words.ts';

/** The pieces of evidence that a lesson's lead holds ready, in the order a bench takes them: what ends the sample as found comes last. */
export const takenPieces = ['marking', 'magnet', 'skin', 'resistance', 'strands', 'mass', 'under'] as const;
/** A piece that can be taken. */
export type TakenPiece = (typeof takenPieces)[number];

/** Which pieces have been taken. A type, not an interface, so that it is an ask as every figure's is. */
export type TakenAsk = Record<TakenPiece, boolean>;

const both = [true, false] as const;
const accepted = Object.fromEntries(takenPieces.map((piece) => [piece, both])) as unknown as Accepts<TakenAsk>;

/** What each part of an ask may be, by practice. */
export const acceptedTaken: Readonly<Record<Practice, Accepts<TakenAsk>>> = { iec: accepted, na: accepted };

/** Only the pieces of `start` taken. */
export const takenAtFirst = (start: readonly TakenPiece[]): TakenAsk =>
  Object.fromEntries(takenPieces.map((piece) => [piece, start.includes(piece)])) as TakenAsk;

/** What is known of the lead once those pieces are taken. */
export const foundSoFar = (all: FoundOnLead, taken: TakenAsk): FoundOnLead =>
  Object.fromEntries(
    takenPieces.filter((piece) => taken[piece] && all[piece] !== undefined).map((piece) => [piece, all[piece]]),
  );

/** What a piece is called, and how it is taken. */
export const takingWords: Readonly<Record<TakenPiece, { name: string; how: string }>> = {
  marking: { name: 'The marking', how: 'Read what is printed on the sheath.' },
  magnet: { name: 'A magnet', how: 'Hold it to the bare strands at one end.' },
  skin: { name: 'The colour', how: 'Look at the bare metal as it lies.' },
  resistance: { name: 'The resistance', how: 'Four leads, the far end joined, and a tape along the lead.' },
  strands: { name: 'The strands', how: 'Count those of one core, and gauge one of them.' },
  mass: { name: 'The mass', how: 'Strip a length of core and weigh the metal. It ends the sample as found.' },
  under: { name: 'Under the skin', how: 'Scrape one strand and look. It ends the sample as found.' },
};

/** Pieces that end a sample as it was found. */
export const endsSample = (piece: TakenPiece): boolean => piece === 'mass' || piece === 'under';

const magnets = { 'does not': 'it does not cling', weakly: 'it is drawn weakly', clings: 'it clings' } as const;

const resistanceWords = (of: NonNullable<FoundOnLead['resistance']>, practice: Practice): string => {
  const read =
    of.U_V !== undefined
      ? `${quantity(of.U_V, 'V', 3)} at ${quantity(of.I_A ?? 0, 'A', 2)}`
      : quantity(of.R_ohm ?? 0, 'Ω', 3);
  const through = of.cores === 2 ? 'out and back' : 'one core';
  return `${read}, ${through} over ${lengthWords(of.length_m, practice)}, at ${temperature(of.T_degC, practice)}`;
};

/** What a piece turned out to be, in words; '' where the lead holds none. */
export function pieceWords(piece: TakenPiece, all: FoundOnLead, practice: Practice): string {
  const { marking, magnet, skin, resistance, strands, mass, under } = all;
  switch (piece) {
    case 'marking':
      return marking ? markedWords(marking, practice) : '';
    case 'magnet':
      return magnet ? magnets[magnet] : '';
    case 'skin':
      return skin ?? '';
    case 'resistance':
      return resistance ? resistanceWords(resistance, practice) : '';
    case 'strands':
      return strands ? `${strands.count}${thin}× ${fixed(strands.diameter_mm ?? 0, 2)}${thin}mm` : '';
    case 'mass':
      return mass ? `${quantity(mass.mass_g, 'g', 2)} from ${lengthWords(mass.length_m, practice)} of core` : '';
    case 'under':
      return under ?? '';
  }
}
