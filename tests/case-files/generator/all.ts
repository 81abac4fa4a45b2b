// Writes the case files' logs anew: `npm run case-files`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { keptLogs, logFolder, logOf } from './logs.ts';

mkdirSync(logFolder, { recursive: true });
for (const log of keptLogs) {
  const bytes = logOf(log);
  writeFileSync(new URL(log.file, logFolder), bytes);
  process.stdout.write(`${log.file}: ${bytes.length} bytes\n`);
}
