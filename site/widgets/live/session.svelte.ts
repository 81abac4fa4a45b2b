import {
  abortStops,
  buildCase,
  celsius,
  type HeatEvent,
  kelvin,
  type Live,
  type LiveState,
  liveRun,
  mostConductor,
  mostSheath,
  type Place,
  type Scenario,
  type SupplyStep,
  type ThermalCase,
  usualBenchVolts,
} from '#engine';
import { clock, fixed, quantity, timeInWords } from '../../lib/format.ts';
import { type LogRow, shownBy } from './log.ts';
import { knobEnd, refusalOf, settingOf } from './rules.ts';
import { type Column, Trace } from './trace.ts';

/** How fast simulated time runs. */
export type Speed = 1 | 10 | 60;

/** The abort contact has opened. */
export interface Trip {
  /** When [s]. */
  readonly t: number;
  readonly place: Place;
  /** The limit that was reached [°C]. */
  readonly T_degC: number;
}

/** The past of the run as it was last drawn. */
export interface Past {
  readonly end: number;
  readonly conductor: Column;
  readonly surface: Column;
  readonly outside: Column;
}

// s of the reader's time; never both in one frame
const redraw = 0.25; // between two drawings of the past
const glances = 0.12; // between two figures, about as a meter's display does it
const speak = 5; // s between two spoken readings, at least
const worthSaying = 2; // K

/** One bench with one lead on it: what is set, how time runs, what the log holds. `wall` gives the time of day for the log. */
export class LiveSession {
  readonly thermal: ThermalCase;
  /** What the probe lies on: a cable without a sheath has a surface only. */
  readonly skin: 'sheath' | 'surface';
  readonly most: { readonly A: number; readonly conductor_degC: number; readonly sheath_degC: number };
  #live: Live;
  #trace = new Trace();
  #wall: () => Date;
  #sinceDrawn = 0;
  #sinceGlance = 0;
  #sinceSaid = 0;
  #saidAt = 0;
  #ranWith: number | undefined;
  #step = 0;
  #rows = 0;

  /** The state at this moment. */
  now: LiveState = $state.raw() as LiveState;
  past: Past = $state.raw() as Past;
  /** The state as the figures, the ladder and the words have it, a tenth of a second old. */
  glance: LiveState = $state.raw() as LiveState;
  /** The past as it stood when time last stood. */
  kept: Past = $state.raw() as Past;
  /** Limits crossed up to now. */
  events = $state.raw<readonly HeatEvent[]>([]);
  /** Setting of the knob [A]. */
  set_A = $state(0);
  /** Greatest volts of the supply [V]. */
  volts = $state(usualBenchVolts);
  conductorLimit_degC = $state(0);
  sheathLimit_degC = $state(celsius(mostSheath));
  speed = $state<Speed>(10);
  running = $state(false);
  trip = $state.raw<Trip | null>(null);
  /** Every opening of the contact in this run. */
  trips = $state.raw<readonly Trip[]>([]);
  /** Why the contact may not be closed yet; empty where nobody asked or nothing hinders it. */
  waits = $state('');
  /** Why the plan is refused; undefined once the bench's own supply was taken instead, or where it may be run. */
  refusal = $state<string>();
  log = $state.raw<readonly LogRow[]>([]);
  /** What a screen reader is told. */
  said = $state('');

  constructor(scenario: Scenario, wall: () => Date = () => new Date()) {
    this.thermal = buildCase(scenario);
    this.skin = this.thermal.cable.sheath ? 'sheath' : 'surface';
    this.#wall = wall;
    this.most = {
      A: knobEnd(this.thermal),
      conductor_degC: celsius(mostConductor(this.thermal)),
      sheath_degC: celsius(mostSheath),
    };
    this.conductorLimit_degC = this.most.conductor_degC;
    this.refusal = refusalOf(scenario);
    this.#live = liveRun(this.thermal, this.most.A);
    this.#load();
  }

  /** The place of a limit, in words. */
  placeWords(place: Place): string {
    return place === 'conductor' ? 'conductor' : this.skin;
  }

  /** True where neither knob nor time may be moved. */
  get held(): boolean {
    return this.refusal !== undefined || this.trip !== null || !this.now.going;
  }

  /** The supply as the engine takes it. */
  get supply(): SupplyStep {
    if (this.set_A <= 0 || this.trip) return { kind: 'off' };
    return { kind: 'current', I_A: this.set_A, compliance_V: this.volts };
  }

  /** True where the supply gives less than is set, because its volts are at their limit. */
  get atVolts(): boolean {
    return this.trip === null && this.set_A - this.glance.lead.I > 0.005;
  }

  /** Lets `seconds` of the reader's time pass. */
  tick(seconds: number): void {
    if (!this.running) return;
    this.#advance(seconds * this.speed);
    this.#sinceDrawn += seconds;
    this.#sinceGlance += seconds;
    this.#sinceSaid += seconds;
    if (!this.running) this.#drawAll();
    else if (this.#sinceDrawn >= redraw) this.#draw();
    else if (this.#sinceGlance >= glances) this.#look();
    const moved = Math.abs(celsius(this.now.conductor) - this.#saidAt) >= worthSaying;
    if (this.#sinceSaid >= speak && moved && this.running) this.#say(this.#reading());
  }

  run(on: boolean): void {
    if (this.refusal !== undefined || !this.now.going || on === this.running) return;
    this.running = on;
    this.#drawAll();
    this.#say(on ? 'Running.' : `Paused at ${timeInWords(this.now.t)}. ${this.#reading()}`);
  }

  setCurrent(A: number): void {
    if (this.held) return;
    const next = Math.min(this.most.A, Math.max(0, Number(A.toFixed(2))));
    if (next === this.set_A) return;
    this.set_A = next;
    this.#supplyChanged();
  }

  setVolts(V: number): void {
    this.volts = V;
    this.#supplyChanged();
  }

  /** The red button: no more current; time runs on and the lead cools. */
  supplyOff(): void {
    if (this.trip || this.set_A === 0) return;
    this.#write('supply off');
    this.set_A = 0;
    this.#supplyChanged();
    this.#say(`Supply off at ${timeInWords(this.now.t)}.`);
  }

  /** Closes the contact again, with the knob at nothing; false while what opened it is still too hot. */
  reset(): boolean {
    if (!this.trip) return true;
    const { place, T_degC } = this.trip;
    if (celsius(this.now[place]) >= T_degC) {
      this.waits = `Not yet: the ${this.placeWords(place)} is at ${quantity(celsius(this.now[place]), '°C', 1)}. Let time run until it is below ${quantity(T_degC, '°C', 0)}.`;
      this.#say(this.waits);
      return false;
    }
    this.waits = '';
    this.trip = null;
    this.#supplyChanged();
    this.#say('Abort contact closed. The knob is at 0 A.');
    return true;
  }

  /** Takes the bench's own supply in place of a plan that is refused. */
  takeOwnSupply(): void {
    this.refusal = undefined;
  }

  /** The lead as it was at first, an empty log. */
  startAgain(): void {
    this.running = false;
    this.trip = null;
    this.trips = [];
    this.waits = '';
    this.log = [];
    this.#step = 0;
    this.#ranWith = undefined;
    this.#live = liveRun(this.thermal, this.most.A);
    this.#trace = new Trace();
    this.#load();
    this.#say('The lead is as it was at the start.');
  }

  /** Writes the readings down. */
  record(): void {
    this.#write('');
    this.#look(); // so that what stands on the displays is what was written down
    this.#say(`Recorded. ${this.#reading()}`);
  }

  note(id: number, note: string): void {
    this.log = this.log.map((row) => (row.id === id ? { ...row, note } : row));
  }

  #load(): void {
    const { I_A, U_V } = settingOf(this.thermal);
    this.set_A = Math.min(this.most.A, I_A);
    this.volts = U_V;
    this.#live.setSupply(this.supply);
    this.now = this.#live.state();
    this.#saidAt = celsius(this.now.conductor);
    this.#drawAll();
  }

  #supplyChanged(): void {
    this.#live.setSupply(this.supply);
    this.now = this.#live.state();
    this.#trace.add(this.now, true);
    this.#drawAll();
  }

  #advance(seconds: number): void {
    if (this.set_A !== this.#ranWith) {
      this.#step++;
      this.#ranWith = this.set_A;
    }
    const end = this.now.t + seconds;
    const stops =
      this.set_A > 0 && !this.trip ? abortStops(kelvin(this.conductorLimit_degC), kelvin(this.sheathLimit_degC)) : [];
    this.now = this.#live.advance(seconds, stops);
    if (this.now.halted) {
      this.#open(this.now.halted.place, celsius(this.now.halted.T));
      this.now = this.#live.advance(end - this.now.t);
    }
    this.#trace.add(this.now, !this.now.going);
    if (!this.now.going) this.#finish();
  }

  #open(place: Place, limit: number): void {
    const T_degC = Number(limit.toFixed(3));
    const event = `abort limit passed: ${this.placeWords(place)} ${fixed(T_degC, 0)} °C`;
    this.#write(event);
    this.trip = { t: this.now.t, place, T_degC };
    this.trips = [...this.trips, this.trip];
    this.set_A = 0;
    this.#ranWith = 0;
    this.#step++;
    this.#supplyChanged();
    this.#say(
      `Abort limit passed at ${timeInWords(this.trip.t)}: ${this.placeWords(place)} at ${fixed(T_degC, 0)} °C. The contact is open.`,
    );
  }

  #finish(): void {
    this.running = false;
    const words = this.ending ?? '';
    this.#write(words);
    this.#say(words);
  }

  /** How the run ended, where nature ended it. */
  get ending(): string | undefined {
    if (this.now.going) return undefined;
    const { metal } = this.thermal.cable.conductor;
    return this.now.conductor >= metal.melting.value - 0.01
      ? `At ${clock(this.now.t)} the ${metal.name} begins to melt. The run ends here.`
      : `At ${clock(this.now.t)} the supply has no solution: the lead cannot pass what is asked of it. The run ends here.`;
  }

  #write(event: string): void {
    const row: LogRow = {
      ...shownBy(this.thermal, this.now),
      id: ++this.#rows,
      at: this.#wall().toISOString(),
      t: this.now.t,
      step: Math.max(1, this.#step),
      set_A: this.set_A,
      ambient_degC: celsius(this.thermal.Ta),
      computed_degC: celsius(this.now.conductor),
      event,
      note: '',
    };
    this.log = [row, ...this.log];
  }

  #draw(): void {
    this.#sinceDrawn = 0;
    this.#trace.add(this.now);
    const trace = this.#trace;
    this.past = {
      end: trace.end,
      conductor: trace.column('conductor'),
      surface: trace.column('surface'),
      outside: trace.column('outside'),
    };
    if (this.#live.events.length !== this.events.length) this.events = this.#live.events.slice();
  }

  #drawAll(): void {
    this.#draw();
    this.#look();
    if (!this.running) this.kept = this.past;
  }

  #look(): void {
    this.#sinceGlance = 0;
    this.glance = this.now;
  }

  #reading(): string {
    const { t, conductor, surface, lead } = this.now;
    return `${timeInWords(t)}: conductor ${quantity(celsius(conductor), '°C', 0)}, ${this.skin} ${quantity(celsius(surface), '°C', 0)}, ${quantity(lead.I, 'A', 1)}.`;
  }

  #say(words: string): void {
    this.#sinceSaid = 0;
    this.#saidAt = celsius(this.now.conductor);
    this.said = words;
  }
}
