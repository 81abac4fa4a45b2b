// Thermal ageing: rate factors over a step of temperature, and what the engine holds for PVC.
import { type Ageing, kelvin, lifeAt, type Plastic, plastics } from '#engine';
import { checkTable, num, type Row } from './table.ts';

const ageing = ageingOf(plastics.pvc70);

function ageingOf({ name, ageing: held }: Plastic): Ageing {
  if (!held) throw new Error(`${name} has no ageing data`);
  return held;
}

function rate(row: Row): number {
  const value = 1e3 * num(row, 'activation_kJPerMol');
  const law = { ...ageing, activationEnergy: { ...ageing.activationEnergy, value } };
  const T = kelvin(num(row, 'T_degC'));
  return lifeAt(law, T) / lifeAt(law, T + num(row, 'step_K'));
}

checkTable('ageing.csv', {
  'rate over 10 K': rate,
  'activation energy of PVC 70 °C': () => ageing.activationEnergy.value / 1e3,
  'life of PVC 70 °C at its rating': () => lifeAt(ageing, kelvin(70)) / 3600,
});
