'use strict';
SwaggerUIBundle({
  dom_id: '#contract',
  url: '/openapi.yaml',
  validatorUrl: null,
  deepLinking: true,
  defaultModelsExpandDepth: 0,
  docExpansion: 'list',
  tryItOutEnabled: true,
});
