# kinds
