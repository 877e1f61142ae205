/**
 * What light does at each kind of surface, as changes to the physical material's lighting: every lamp has
 * a size, which widens its highlight and its turn into shade, and a soft shadow; the fill is shaded by the
 * sitter's baked openness.
 */
import { ShaderChunk } from 'three';
import { SOFT_BOXES, WALL_RADIANCE } from '../fill';
import { BACKDROP_SOURCE } from '../lamps';
import { eye } from './eye';
import { glass } from './glass';
import { hair } from './hair';
import { insertAfter, replaceOnce, type ShaderText } from './patch';
import { skin } from './skin';
import { softShadowFragment } from './softShadow';
import type { SurfaceText } from './surfaceText';

export type Surface =
  | 'skin'
  | 'hair'
  | 'eye'
  | 'cloth'
  | 'plain'
  | 'clay'
  | 'clayHair'
  | 'glass'
  | 'room';

const shared = /* glsl */ `
// The lamp in hand: its light before the shadow, its shadow, its angular radius.
vec3 lampLight = vec3( 0.0 );
float lampShadow = 1.0;
float lampSpread = 0.07;

// Share of the hall's open space over the point, and what a fold too fine for a shadow map lets in.
varying float vOpen;
float creaseLight = 1.0;

uniform float fillIrradiance[ 9 ];
uniform float fillRadiance[ 9 ];
uniform float fillShare;

float harmonic( const in float c[ 9 ], vec3 d, float first, float second ) {
	return 0.282095 * c[ 0 ] + first * 0.488603 * ( c[ 1 ] * d.y + c[ 2 ] * d.z + c[ 3 ] * d.x )
		+ second * ( 1.092548 * ( c[ 4 ] * d.x * d.y + c[ 5 ] * d.y * d.z + c[ 7 ] * d.x * d.z )
		+ 0.315392 * c[ 6 ] * ( 3.0 * d.z * d.z - 1.0 ) + 0.546274 * c[ 8 ] * ( d.x * d.x - d.y * d.y ) );
}

PhysicalMaterial widened( const in PhysicalMaterial material, float more ) {
	PhysicalMaterial wide = material;
	wide.roughness = sqrt( min( 1.0, material.roughness * material.roughness + more ) );
	return wide;
}
`;

const plain: SurfaceText = {
  direct: /* glsl */ `
	vec3 irradiance = saturate( dot( geometryNormal, directLight.direction ) ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseContribution );
	reflectedLight.directSpecular += irradiance * BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, widened( material, 0.5 * lampSpread ) );
`,
};

const cloth: SurfaceText = {
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.08 ) / 1.166 );
	float edge = 1.0 - saturate( dot( geometryNormal, geometryViewDir ) );
	float nap = 0.35 * edge * edge * edge;
	reflectedLight.directDiffuse += through * directLight.color * BRDF_Lambert( material.diffuseContribution * ( 1.0 + nap ) + 0.03 * nap );
	reflectedLight.directSpecular += saturate( facing ) * directLight.color * BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material ) * 0.5;
`,
};

/** Unglazed clay: matte, its turn into shade as soft as the lamp is wide; hollows stay a little darker. */
const clay: SurfaceText = {
  setup: /* glsl */ `
diffuseColor.rgb *= mix( 0.72, 1.0, smoothstep( 0.05, 0.75, vOpen ) );
`,
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float width = 0.04 + lampSpread;
	float rise = saturate( ( facing + width ) / ( 2.0 * width ) );
	float arriving = facing > width ? facing : width * rise * rise;
	float edge = 1.0 - saturate( dot( geometryNormal, geometryViewDir ) );
	reflectedLight.directDiffuse += arriving * directLight.color * BRDF_Lambert( material.diffuseContribution * ( 1.0 + 0.25 * edge * edge ) );
	reflectedLight.directSpecular += saturate( facing ) * directLight.color * BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, widened( material, 0.5 * lampSpread ) ) * 0.6;
`,
};

/** Clay cut into single hairs, which keep its colour. */
const clayHair: SurfaceText = {
  ...hair,
  setup: `${hair.setup}diffuseColor.rgb = diffuse;\n`,
  direct: clay.direct,
};

const SURFACES: Readonly<Record<Surface, SurfaceText>> = {
  skin,
  hair,
  eye,
  cloth,
  plain,
  clay,
  clayHair,
  glass,
  room: plain,
};

const fill = /* glsl */ `
vec3 fillNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
vec3 fillMirror = transformNormalByInverseViewMatrix( reflect( - geometryViewDir, geometryNormal ), viewMatrix );
iblIrradiance += vec3( fillShare * max( harmonic( fillIrradiance, fillNormal, 1.0, 1.0 ), 0.0 ) );
`;

/** A rough surface mirrors the fill blurred: its higher bands fade. */
const blurredFill = `${fill}
radiance += vec3( fillShare * max( harmonic( fillRadiance, fillMirror, 0.85, 0.55 ), 0.0 ) );
`;

const mirroredFill = `${fill}
float mirroredLight = ${WALL_RADIANCE};
for ( int i = 0; i < ${SOFT_BOXES}; i ++ ) {
	vec3 facing = cross( boxLevel[ i ], boxUpright[ i ] );
	float towards = dot( fillMirror, facing );
	float along = dot( boxCentre[ i ], facing ) / towards;
	vec3 off = fillMirror * along - boxCentre[ i ];
	float edge = max( abs( dot( off, boxLevel[ i ] ) ), abs( dot( off, boxUpright[ i ] ) ) );
	float soft = min( fwidth( edge ), 0.5 );
	mirroredLight = mix( mirroredLight, boxRadiance[ i ], along > 0.0 ? 1.0 - smoothstep( 1.0 - soft, 1.0 + soft, edge ) : 0.0 );
}
radiance += vec3( mirroredLight );
`;

const boxes = /* glsl */ `
uniform vec3 boxCentre[ ${SOFT_BOXES} ];
uniform vec3 boxLevel[ ${SOFT_BOXES} ];
uniform vec3 boxUpright[ ${SOFT_BOXES} ];
uniform float boxRadiance[ ${SOFT_BOXES} ];
`;

/**
 * The backdrop light has no shadow map: where it is kept off the room by the hanging sheet alone, the sheet's
 * rectangle tells. A round source seen past an edge: as soft as it is wide there, by similar triangles.
 */
const pastSheet = /* glsl */ `
uniform vec4 hungSheet;

vec3 inRoom( vec3 point ) {
	return ( vec4( point - viewMatrix[ 3 ].xyz, 0.0 ) * viewMatrix ).xyz;
}

float pastSheet( vec3 lamp, vec3 point ) {
	float plane = hungSheet.z;
	if ( hungSheet.w == 0.0 || lamp.z <= plane || point.z > plane - 0.005 ) return 1.0;
	float way = ( lamp.z - plane ) / ( lamp.z - point.z );
	vec3 through = mix( lamp, point, way );
	float past = max( abs( through.x ) - hungSheet.x, through.y - hungSheet.y );
	float soft = max( 0.002, ${0.5 * BACKDROP_SOURCE} * ( 1.0 - way ) );
	return smoothstep( - soft, soft, past );
}
`;

const keptOff = /* glsl */ `
		#if UNROLLED_LOOP_INDEX >= NUM_SPOT_LIGHT_SHADOWS
		directLight.color *= pastSheet( inRoom( spotLight.position ), inRoom( geometryPosition ) );
		#endif
`;

/**
 * Openness shades the fill; light that bounces between the walls of a fold takes on their colour, so a
 * fold in skin is red before it is black (Jimenez et al. 2016, "Practical real-time strategies for
 * accurate indirect occlusion"). Mirrored light goes first.
 */
const shadedFill = /* glsl */ `
{
	vec3 albedo = saturate( material.diffuseContribution );
	float open = mix( 0.14, 1.0, vOpen );
	vec3 a = 2.0404 * albedo - 0.3324;
	vec3 b = - 4.7951 * albedo + 0.6417;
	vec3 c = 2.7552 * albedo + 0.6903;
	reflectedLight.indirectDiffuse *= max( vec3( open ), ( ( open * a + b ) * open + c ) * open );
	reflectedLight.indirectSpecular *= open * open;
}
`;

const signature =
  'const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight';

/** The renderer's light loop with each lamp's own shadow and size. */
export function lampLoop(surface: Surface): string {
  const chunk = insertAfter(
    ShaderChunk.lights_fragment_begin,
    'getSpotLightInfo( spotLight, geometryPosition, directLight );',
    `lampLight = directLight.color; lampShadow = 1.0; lampSpread = 0.07;${surface === 'room' ? keptOff : ''}`,
  );
  return replaceOnce(
    chunk,
    'directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;',
    `lampSpread = 0.5 * lampOptics[ i ].w / length( spotLight.position - geometryPosition );
		if ( receiveShadow && directLight.visible && dot( geometryNormal, directLight.direction ) > - 0.25 ) {
			lampShadow = softShadow( spotShadowMap[ i ], lampDepths[ i ], lampAxes[ i ], lampOptics[ i ], lampFirst[ i ], vSpotLightCoord[ i ], spotLightShadow.shadowMapSize, transformNormalByInverseViewMatrix( geometryNormal, viewMatrix ) );
		}
		lampLight *= creaseLight;
		directLight.color *= lampShadow * creaseLight;`,
  );
}

/** Turns the physical material's text into that of a surface under the studio's lamps. */
export function lightSurface(shader: ShaderText, surface: Surface): void {
  const text = SURFACES[surface];
  // The hall's colours hold its shade already.
  const open =
    surface === 'room'
      ? { pars: '', value: '1.0' }
      : { pars: 'attribute float openness;\n', value: 'openness' };
  let fragment = insertAfter(
    shader.fragmentShader,
    '#include <shadowmap_pars_fragment>',
    `${softShadowFragment}${shared}${text.mirrors === 'boxes' ? boxes : ''}${surface === 'room' ? pastSheet : ''}${text.pars ?? ''}
void RE_Direct_Surface( ${signature} ) {${text.direct}}
#undef RE_Direct
#define RE_Direct RE_Direct_Surface`,
  );
  fragment = replaceOnce(
    fragment,
    '#include <lights_fragment_maps>',
    text.mirrors === 'boxes' ? mirroredFill : blurredFill,
  );
  fragment = insertAfter(fragment, '#include <aomap_fragment>', shadedFill);
  // Into a float target the light goes undithered: the output pass dithers the encoded picture.
  fragment = replaceOnce(
    fragment,
    '#include <dithering_fragment>',
    '#ifdef TONE_MAPPING\n#include <dithering_fragment>\n#endif',
  );
  fragment = insertAfter(
    fragment,
    '#include <normal_fragment_maps>',
    `creaseLight = smoothstep( 0.04, 0.5, vOpen );\n${text.setup ?? ''}`,
  );
  shader.fragmentShader = replaceOnce(
    fragment,
    '#include <lights_fragment_begin>',
    lampLoop(surface),
  );
  shader.vertexShader = insertAfter(
    replaceOnce(
      shader.vertexShader,
      '#include <common>',
      `#include <common>\n${open.pars}varying float vOpen;\n${text.vertexPars ?? ''}`,
    ),
    '#include <begin_vertex>',
    `vOpen = ${open.value};\n${text.vertexMain ?? ''}`,
  );
}
