'use strict';
SwaggerUIBundle({
  url: '/openapi.json',
  dom_id: '#reference',
  presets: [SwaggerUIBundle.presets.apis],
  validatorUrl: null,
  docExpansion: 'list',
  defaultModelsExpandDepth: -1,
});
