// Asks the service through the generated client: node call.js ADDRESS, two requests as JSON on standard input, two answers out.
import {
  BankCapacityAnswerToJSON, BankCapacityRequestFromJSON, CalculatorsApi, Configuration, SystemDesignAnswerToJSON,
  SystemDesignRequestFromJSON,
} from './index';

declare const process: { argv: string[] };
declare const require: (name: 'fs') => { readFileSync(file: number, encoding: string): string };

async function main(): Promise<void> {
  const api = new CalculatorsApi(new Configuration({ basePath: process.argv[2] }));
  const [bank, system] = JSON.parse(require('fs').readFileSync(0, 'utf8'));
  const capacity = await api.bankCapacity({ bankCapacityRequest: BankCapacityRequestFromJSON(bank) });
  const design = await api.systemDesign({ systemDesignRequest: SystemDesignRequestFromJSON(system) });
  console.log(JSON.stringify([BankCapacityAnswerToJSON(capacity), SystemDesignAnswerToJSON(design)]));
}

main();
