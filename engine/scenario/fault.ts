/** What is wrong with a scenario: where (a dotted path), and a plain sentence that says what would be right. */
export interface Fault {
  readonly path: string;
  readonly message: string;
}

/** Thrown while a scenario's parts are put together; `parseScenario` turns it into a fault. */
export class ScenarioFault extends Error {
  readonly fault: Fault;

  constructor(path: string, message: string) {
    super(`${path} ${message}`);
    this.name = 'ScenarioFault';
    this.fault = { path, message };
  }
}

/** One line of text for a fault. */
export function faultLine({ path, message }: Fault): string {
  return path ? `${path} ${message}` : `the scenario ${message}`;
}
