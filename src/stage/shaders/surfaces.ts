/**
 * What light does at each kind of surface, as changes to the physical material's direct lighting:
 * every lamp has a size, which widens its highlight; skin lets light through beyond the terminator
 * and at the edge of a shadow, red farthest; hair shines along its strands; eyes mirror the lamp.
 */
import { ShaderChunk } from 'three';
import { SOFT_BOXES, WALL_RADIANCE } from '../fill';
import { insertAfter, replaceOnce, type ShaderText } from './patch';
import { softShadowFragment } from './softShadow';

export type Surface = 'skin' | 'hair' | 'eye' | 'cloth' | 'plain';

const shared = /* glsl */ `
// The lamp in hand: its light before the shadow, its shadow, its angular radius.
vec3 lampLight = vec3( 0.0 );
float lampShadow = 1.0;
float lampSpread = 0.07;

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

const direct: Record<Surface, string> = {
  plain: /* glsl */ `
	vec3 irradiance = saturate( dot( geometryNormal, directLight.direction ) ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseContribution );
	reflectedLight.directSpecular += irradiance * BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, widened( material, 0.5 * lampSpread ) );
`,
  skin: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	vec3 reach = vec3( 0.14, 0.055, 0.03 ) + 0.3 * lampSpread;
	vec3 wrapped = saturate( ( facing + reach ) / ( ( 1.0 + reach ) * ( 1.0 + reach ) ) );
	vec3 bled = pow( vec3( max( lampShadow, 1e-4 ) ), vec3( 0.82, 0.98, 1.04 ) );
	vec3 arriving = wrapped * bled * lampLight;
	float edge = 1.0 - saturate( dot( geometryNormal, geometryViewDir ) );
	vec3 down = vec3( 0.10, 0.088, 0.08 ) * edge * edge * edge;
	reflectedLight.directDiffuse += arriving * ( BRDF_Lambert( material.diffuseContribution ) + down * RECIPROCAL_PI );
	vec3 irradiance = saturate( facing ) * directLight.color;
	vec3 broad = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, widened( material, 0.5 * lampSpread ) );
	reflectedLight.directSpecular += irradiance * broad;
`,
  hair: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.35 ) / 1.82 );
	reflectedLight.directDiffuse += through * directLight.color * BRDF_Lambert( material.diffuseContribution );
	vec3 halfway = normalize( directLight.direction + geometryViewDir );
	float along = dot( strand, halfway );
	float front = smoothstep( - 0.1, 0.5, facing );
	float first = along + 0.10 + strandShift;
	float second = along - 0.16 + 1.6 * strandShift;
	float width1 = 0.011 + 0.25 * lampSpread * lampSpread;
	float width2 = 0.05 + 0.25 * lampSpread * lampSpread;
	float lobe1 = exp( - first * first / ( 2.0 * width1 ) ) * 0.020 / sqrt( width1 );
	float lobe2 = exp( - second * second / ( 2.0 * width2 ) ) * 0.06 / sqrt( width2 );
	reflectedLight.directSpecular += front * directLight.color * RECIPROCAL_PI * ( vec3( lobe1 ) + lobe2 * sqrt( max( material.diffuseContribution, vec3( 0.0 ) ) ) * 0.8 );
`,
  eye: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.3 ) / 1.69 );
	vec3 arriving = mix( vec3( 1.0 ), vec3( 1.0, 0.93, 0.9 ), 1.0 - saturate( facing ) ) * through * directLight.color;
	reflectedLight.directDiffuse += arriving * BRDF_Lambert( material.diffuseContribution );
	// The wet surface mirrors the lamp's disc: its radiance is irradiance over the solid angle it fills.
	float angle = acos( clamp( dot( reflect( - geometryViewDir, geometryNormal ), directLight.direction ), - 1.0, 1.0 ) );
	float rim = max( fwidth( angle ), 0.12 * lampSpread );
	float disc = 1.0 - smoothstep( lampSpread - rim, lampSpread + rim, angle );
	float mirrored = 0.03 + 0.97 * pow( 1.0 - saturate( dot( geometryNormal, geometryViewDir ) ), 5.0 );
	reflectedLight.directSpecular += disc * mirrored * min( RECIPROCAL_PI / ( lampSpread * lampSpread ), 60.0 ) * directLight.color;
`,
  cloth: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.08 ) / 1.166 );
	float edge = 1.0 - saturate( dot( geometryNormal, geometryViewDir ) );
	float nap = 0.35 * edge * edge * edge;
	reflectedLight.directDiffuse += through * directLight.color * BRDF_Lambert( material.diffuseContribution * ( 1.0 + nap ) + 0.03 * nap );
	reflectedLight.directSpecular += saturate( facing ) * directLight.color * BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material ) * 0.5;
`,
};

const fill = /* glsl */ `
vec3 fillNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
vec3 fillMirror = transformNormalByInverseViewMatrix( reflect( - geometryViewDir, geometryNormal ), viewMatrix );
iblIrradiance += vec3( fillShare * max( harmonic( fillIrradiance, fillNormal, 1.0, 1.0 ), 0.0 ) );
`;

/** A rough surface mirrors the fill blurred: its higher bands fade. */
const roughFill = `${fill}
radiance += vec3( fillShare * max( harmonic( fillRadiance, fillMirror, 0.85, 0.55 ), 0.0 ) );
`;

const mirroredFill = `${fill}
float mirroredLight = ${WALL_RADIANCE};
for ( int i = 0; i < ${SOFT_BOXES.length}; i ++ ) {
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
uniform vec3 boxCentre[ ${SOFT_BOXES.length} ];
uniform vec3 boxLevel[ ${SOFT_BOXES.length} ];
uniform vec3 boxUpright[ ${SOFT_BOXES.length} ];
uniform float boxRadiance[ ${SOFT_BOXES.length} ];
`;

const strandSetup = /* glsl */ `
// Strands lie along the surface, away from the whorl, as combed hair does.
vec3 fromWhorl = vPlace - whorl;
vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
vec3 laid = fromWhorl - worldNormal * dot( fromWhorl, worldNormal );
strand = normalize( ( viewMatrix * vec4( laid + vec3( 0.0, -1e-4, 0.0 ), 0.0 ) ).xyz );
vec3 ahead = normalize( cross( vec3( 1.0, 0.0, 0.0 ), whorlAxis ) );
vec3 beside = cross( whorlAxis, ahead );
float around = atan( dot( fromWhorl, beside ), dot( fromWhorl, ahead ) );
float streaks = strandNoise( around * 22.0 ) * 0.5 + strandNoise( around * 71.0 + 7.0 ) * 0.3 + strandNoise( around * 190.0 + 3.0 ) * 0.2;
strandShift = ( streaks - 0.5 ) * 0.16;
diffuseColor.rgb *= 0.78 + 0.44 * streaks;
`;

const strandShared = /* glsl */ `
uniform vec3 whorl;
uniform vec3 whorlAxis;
varying vec3 vPlace;
vec3 strand = vec3( 0.0, -1.0, 0.0 );
float strandShift = 0.0;
float strandHash( float cell ) { return fract( sin( cell * 91.3458 ) * 47453.5453 ); }
float strandNoise( float x ) {
	float cell = floor( x );
	float part = x - cell;
	float fine = 1.0 - smoothstep( 0.3, 1.2, fwidth( x ) );
	float value = mix( strandHash( cell ), strandHash( cell + 1.0 ), part * part * ( 3.0 - 2.0 * part ) );
	return mix( 0.5, value, fine );
}
`;

const signature =
  'const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight';

/** The renderer's light loop with each lamp's own shadow and size. */
export function lampLoop(): string {
  const chunk = insertAfter(
    ShaderChunk.lights_fragment_begin,
    'getSpotLightInfo( spotLight, geometryPosition, directLight );',
    'lampLight = directLight.color; lampShadow = 1.0; lampSpread = 0.07;',
  );
  return replaceOnce(
    chunk,
    'directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;',
    `lampSpread = 0.5 * lampOptics[ i ].w / length( spotLight.position - geometryPosition );
		if ( receiveShadow && directLight.visible && dot( geometryNormal, directLight.direction ) > - 0.25 ) {
			lampShadow = softShadow( spotShadowMap[ i ], lampDepths[ i ], lampAxes[ i ], lampOptics[ i ], lampFirst[ i ], vSpotLightCoord[ i ], spotLightShadow.shadowMapSize, transformNormalByInverseViewMatrix( geometryNormal, viewMatrix ) );
		}
		directLight.color *= lampShadow;`,
  );
}

/** Turns the physical material's text into that of a surface under the studio's lamps. */
export function lightSurface(shader: ShaderText, surface: Surface): void {
  const hair = surface === 'hair';
  const eye = surface === 'eye';
  let fragment = insertAfter(
    shader.fragmentShader,
    '#include <shadowmap_pars_fragment>',
    `${softShadowFragment}${shared}${hair ? strandShared : ''}${eye ? boxes : ''}
void RE_Direct_Surface( ${signature} ) {${direct[surface]}}
#undef RE_Direct
#define RE_Direct RE_Direct_Surface`,
  );
  fragment = replaceOnce(
    fragment,
    '#include <lights_fragment_maps>',
    eye ? mirroredFill : roughFill,
  );
  // Into a float target the light goes undithered: the output pass dithers the encoded picture.
  fragment = replaceOnce(
    fragment,
    '#include <dithering_fragment>',
    '#ifdef TONE_MAPPING\n#include <dithering_fragment>\n#endif',
  );
  if (hair) fragment = insertAfter(fragment, '#include <normal_fragment_maps>', strandSetup);
  shader.fragmentShader = replaceOnce(fragment, '#include <lights_fragment_begin>', lampLoop());
  if (hair) {
    shader.vertexShader = insertAfter(
      replaceOnce(
        shader.vertexShader,
        '#include <common>',
        '#include <common>\nvarying vec3 vPlace;',
      ),
      '#include <begin_vertex>',
      'vPlace = position;',
    );
  }
}
