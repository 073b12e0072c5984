export const cautions: readonly string[] = [
  'Esto no es un diseño ni un ensayo de choque. Rigen el plano estándar y la especificación de la agencia y el manual del fabricante del terminal vigentes en la adjudicación; donde difieran de lo que se muestra aquí, deténgase y pregunte al ingeniero.',
  'Las fichas de herrajes incluidas son ejemplos; cámbielas por fichas hechas con los documentos vigentes. Un límite marcado "de memoria" no se cotejó con ningún documento.',
  'La aceptación la firma una persona, un ingeniero con licencia donde la ley lo pide; esta herramienta no firma nada.',
  'Un valor dentro de la incertidumbre de su medición no es un cumplimiento.',
  'Llame al servicio de localización de servicios enterrados antes de hincar o arrancar un poste, y espere sus marcas.',
  'Trabaje tras el control de tránsito que pide el plano; nunca se arrodille en un carril abierto ni junto a él para leer una altura.',
  'Un cable de anclaje está bajo carga, los postes hincados y los bordes cortados hieren: use la protección que pide el trabajo. Un extremo expuesto o un hueco abierto al final del día tiene que protegerse.',
]
