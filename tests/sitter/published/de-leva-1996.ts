/**
 * de Leva 1996, J. Biomechanics 29, 1223-1230, table 4, copied out by others (read second-hand): of one segment
 * [mass fraction, centre from the first-named end, transverse radius of gyration], by its ends.
 */
type Row = readonly [mass: number, centre: number, gyration: number];

export const deLeva1996 = {
  female: {
    'Head VERT-MIDG': [0.0668, 0.5894, 0.359],
    'Trunk SUPR-MIDH': [0.4257, 0.4151, 0.339],
    'Upper trunk SUPR-XYPH': [0.1545, 0.2077, 0.502],
    'Middle trunk XYPH-OMPH': [0.1465, 0.4512, 0.354],
    'Lower trunk OMPH-MIDH': [0.1247, 0.492, 0.402],
    'Upper arm SJC-EJC': [0.0255, 0.5754, 0.26],
    'Forearm EJC-WJC': [0.0138, 0.4559, 0.257],
    'Hand WJC-MET3': [0.0056, 0.7474, 0.454],
    'Thigh HJC-KJC': [0.1478, 0.3612, 0.364],
    'Shank KJC-AJC': [0.0481, 0.4352, 0.263],
    'Foot HEEL-TTIP': [0.0129, 0.4014, 0.279],
    'Head VERT-CERV': [0.0668, 0.4841, 0.295],
    'Trunk CERV-MIDH': [0.4257, 0.4964, 0.292],
    'Trunk MIDS-MIDH': [0.4257, 0.3782, 0.361],
    'Upper trunk CERV-XYPH': [0.1545, 0.505, 0.314],
    'Forearm EJC-STYL': [0.0138, 0.4592, 0.259],
    'Hand WJC-DAC3': [0.0056, 0.3427, 0.208],
    'Hand STYL-DAC3': [0.0056, 0.3502, 0.206],
    'Hand STYL-MET3': [0.0056, 0.7534, 0.443],
    'Shank KJC-LMAL': [0.0481, 0.4416, 0.267],
    'Shank KJC-SPHY': [0.0481, 0.4481, 0.271],
  },
  male: {
    'Head VERT-MIDG': [0.0694, 0.5976, 0.376],
    'Trunk SUPR-MIDH': [0.4346, 0.4486, 0.347],
    'Upper trunk SUPR-XYPH': [0.1596, 0.2999, 0.454],
    'Middle trunk XYPH-OMPH': [0.1633, 0.4502, 0.383],
    'Lower trunk OMPH-MIDH': [0.1117, 0.6115, 0.551],
    'Upper arm SJC-EJC': [0.0271, 0.5772, 0.269],
    'Forearm EJC-WJC': [0.0162, 0.4574, 0.265],
    'Hand WJC-MET3': [0.0061, 0.79, 0.513],
    'Thigh HJC-KJC': [0.1416, 0.4095, 0.329],
    'Shank KJC-AJC': [0.0433, 0.4395, 0.246],
    'Foot HEEL-TTIP': [0.0137, 0.4415, 0.245],
    'Head VERT-CERV': [0.0694, 0.5002, 0.315],
    'Trunk CERV-MIDH': [0.4346, 0.5138, 0.306],
    'Trunk MIDS-MIDH': [0.4346, 0.431, 0.358],
    'Upper trunk CERV-XYPH': [0.1596, 0.5066, 0.32],
    'Forearm EJC-STYL': [0.0162, 0.4608, 0.267],
    'Hand WJC-DAC3': [0.0061, 0.3624, 0.235],
    'Hand STYL-DAC3': [0.0061, 0.3691, 0.233],
    'Hand STYL-MET3': [0.0061, 0.7948, 0.502],
    'Shank KJC-LMAL': [0.0433, 0.4459, 0.249],
    'Shank KJC-SPHY': [0.0433, 0.4524, 0.253],
  },
} as const satisfies Record<string, Record<string, Row>>;
