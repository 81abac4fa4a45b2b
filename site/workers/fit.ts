// Compares and fits logs away from the page, so that it stays at hand. A job is ended by ending the worker.
import { answering } from '../lib/work.ts';
import { fitWork } from './fit-work.ts';

answering(fitWork);
