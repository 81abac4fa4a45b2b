// `npm run study`: every long study of this folder, or those whose name holds one of the words given. They print; nothing fails.
const studies = ['recovery', 'malformed', 'held-back'];
const words = process.argv.slice(2).filter((word) => Number.isNaN(Number(word)));
for (const name of studies)
  if (words.length === 0 || words.some((word) => name.includes(word))) await import(`./${name}.ts`);

export {};
