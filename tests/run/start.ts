// npm start: builds the site and serves it on this machine until Ctrl-C. PORT chooses the port it tries first.
import { buildSite, reasonOf, serveSite } from './site.ts';

process.env.ASTRO_TELEMETRY_DISABLED = '1';

/** The port asked for by PORT, or 4321. */
function wishedPort(): number {
  const port = Number(process.env.PORT ?? 4321);
  if (Number.isInteger(port) && port > 0 && port < 65536) return port;
  console.error(`PORT is ${process.env.PORT}, which is no port number; 4321 is tried instead.`);
  return 4321;
}

console.log('Building the site …');
const fault = await buildSite();
if (fault !== undefined) {
  console.error(`The site could not be built: ${reasonOf(fault)} (npm run build shows the whole message)`);
  process.exit(1);
}
const served = await serveSite(wishedPort());
console.log(`Ampere & Ember is open at ${served.origin}`);
console.log('Ctrl-C stops it.');

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, async () => {
    await served.stop();
    process.exit(0);
  });
}
