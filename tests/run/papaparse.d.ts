// What the engine uses of papaparse. The package's own types bring those of Node with them, which the engine must do without.
interface Parsed<T> {
  data: T[];
  errors: { message: string }[];
}
declare const Papa: {
  parse<T>(text: string, options: { delimiter: string; newline: '\n'; fastMode: boolean }): Parsed<T>;
  unparse(table: { fields: string[]; data: unknown[][] }, options: { newline: string }): string;
};
export default Papa;
