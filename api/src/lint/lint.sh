# Holds the contract, the file given, against redocly.yaml; says so where there is no node to do it with.
if ! command -v npx >/dev/null; then
  echo "The contract is not linted: there is no npx, install Node.js 20.19 or later"
  exit 0
fi
REDOCLY_TELEMETRY=off REDOCLY_SUPPRESS_UPDATE_NOTICE=true \
  exec npx --yes @redocly/cli@2.77.0 lint --config "$(dirname "$0")/redocly.yaml" "$1"
