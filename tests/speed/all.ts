// `npm run speed`: every speed figure, each beside a baseline of the same run. Nothing here passes or fails.
import { cordHour } from './cord-hour.ts';
import { fitFigures } from './fit.ts';
import { harmSetFigures } from './harm-sets.ts';
import { questions } from './questions.ts';
import { ratings } from './ratings.ts';
import { readings } from './readings.ts';
import { slider } from './slider.ts';

cordHour();
ratings();
harmSetFigures();
fitFigures();
questions();
readings();
await slider();
