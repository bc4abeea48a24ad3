"""Asks the service through the generated client: call.py ADDRESS, two requests as JSON on standard input, two answers out."""
import json
import sys

from example_client import ApiClient, Configuration
from example_client.api.calculators_api import CalculatorsApi
from example_client.models.bank_capacity_request import BankCapacityRequest
from example_client.models.system_design_request import SystemDesignRequest

client = ApiClient(Configuration(host=sys.argv[1]))
calculators = CalculatorsApi(client)
bank, system = json.load(sys.stdin)
capacity = calculators.bank_capacity(BankCapacityRequest.from_dict(bank))
design = calculators.system_design(SystemDesignRequest.from_dict(system))
print(json.dumps(client.sanitize_for_serialization([capacity, design])))
