import { celsius, leadReading, type Prediction } from '#engine';

const columns = [
  'time_s',
  'conductor_degC',
  'surface_degC',
  'outside_degC',
  'current_A',
  'lead_V',
  'lead_W',
  'heat_W_per_m',
] as const;

/** The curves of a prediction as CSV: one header row with units, decimal points, a row a sample. */
export async function csvOf(prediction: Prediction): Promise<string> {
  const { default: Papa } = await import('papaparse');
  const { curves } = prediction.run;
  const rows = Array.from(curves.t, (t, i) => {
    const conductor = curves.conductor[i] as number;
    const I = curves.I[i] as number;
    const { U, heat } = leadReading(prediction.thermal, I, conductor);
    const degrees = [conductor, curves.surface[i] as number, curves.outside[i] as number];
    return [
      t.toFixed(3),
      ...degrees.map((T) => celsius(T).toFixed(3)),
      I.toPrecision(6),
      U.toPrecision(6),
      heat.toPrecision(6),
      (curves.heat[i] as number).toPrecision(6),
    ];
  });
  return Papa.unparse({ fields: [...columns], data: rows }, { newline: '\r\n' });
}

/** Hands a text to the browser as a file to keep. */
export function saveText(name: string, text: string, type = 'text/csv'): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
