import { slider } from './slider.ts';
await slider();
