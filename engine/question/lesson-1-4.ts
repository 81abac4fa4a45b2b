import type { Template } from './types.ts';
import { ampsOrVoltsHeld } from './unit-1/amps-or-volts-held.ts';
import { ampsWhenWarm } from './unit-1/amps-when-warm.ts';
import { ownThermometer } from './unit-1/own-thermometer.ts';
import { warmResistance } from './unit-1/warm-resistance.ts';

/** Questions of lesson 1.4, hot metal resists more. */
export const questions14: readonly Template[] = [warmResistance, ampsWhenWarm, ownThermometer, ampsOrVoltsHeld];
